import type { Page } from 'playwright';

/** How an invented data sheet is drawn: axes from their first to their last printed value, in a turned picture. */
export interface DrawnSheet {
  readonly width: number;
  readonly height: number;
  readonly turned_rad: number;
  readonly flow: { readonly from: number; readonly to: number; readonly step: number };
  readonly pressure: { readonly log: boolean; readonly printed: readonly number[] };
  /** Flow and pressure along the curve, in the units of the sheet. */
  readonly curve: readonly (readonly [number, number])[];
}

const left = 90;
const below = 70;

/** Where a value of the sheet lies in its picture, in pixels. */
export function placeIn(sheet: DrawnSheet, flow: number, pressure: number): { x: number; y: number } {
  const { printed, log } = sheet.pressure;
  const scale = (value: number) => (log ? Math.log(value) : value);
  const [low = 0, high = 1] = [printed[0], printed.at(-1)].map((each) => scale(each ?? 0));
  const along = ((flow - sheet.flow.from) / (sheet.flow.to - sheet.flow.from)) * (sheet.width - 2 * left);
  const up = ((scale(pressure) - low) / (high - low)) * (sheet.height - 2 * below);
  const [cos, sin] = [Math.cos(sheet.turned_rad), Math.sin(sheet.turned_rad)];
  return { x: left + along * cos + up * sin, y: sheet.height - below + along * sin - up * cos };
}

/** The sheet as a PNG, painted by the browser: grid, printed values, curve. */
export async function paintSheet(page: Page, sheet: DrawnSheet): Promise<Buffer> {
  const at = (flow: number, pressure: number) => placeIn(sheet, flow, pressure);
  const { from, to, step } = sheet.flow;
  const { printed } = sheet.pressure;
  const flows = Array.from({ length: Math.round((to - from) / step) + 1 }, (_, index) => from + index * step);
  const lines = [
    ...flows.map((flow) => [at(flow, printed[0] ?? 0), at(flow, printed.at(-1) ?? 0)]),
    ...printed.map((pressure) => [at(from, pressure), at(to, pressure)]),
  ];
  const texts = [
    ...flows.map((flow) => ({ text: String(flow), ...at(flow, printed[0] ?? 0), dx: -6, dy: 20 })),
    ...printed.map((pressure) => ({ text: String(pressure), ...at(from, pressure), dx: -34, dy: 5 })),
  ];
  const curve = sheet.curve.map(([flow, pressure]) => at(flow, pressure));
  const bytes = await page.evaluate(
    async ({ width, height, lines, texts, curve }) => {
      const canvas = new OffscreenCanvas(width, height);
      const pen = canvas.getContext('2d');
      if (pen === null) throw new Error('no canvas');
      pen.fillStyle = '#fff';
      pen.fillRect(0, 0, width, height);
      const draw = (places: readonly { x: number; y: number }[], colour: string, thick: number) => {
        pen.strokeStyle = colour;
        pen.lineWidth = thick;
        pen.beginPath();
        for (const { x, y } of places) pen.lineTo(x, y);
        pen.stroke();
      };
      for (const line of lines) draw(line, '#888', 1);
      pen.fillStyle = '#222';
      pen.font = '14px sans-serif';
      for (const { text, x, y, dx, dy } of texts) pen.fillText(text, x + dx, y + dy);
      draw(curve, '#000', 2);
      const blob = await canvas.convertToBlob();
      return [...new Uint8Array(await blob.arrayBuffer())];
    },
    { width: sheet.width, height: sheet.height, lines, texts, curve },
  );
  return Buffer.from(bytes);
}
