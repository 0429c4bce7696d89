import { describe, expect, test } from 'vitest';
import { designFragment, holdsDesign, readFragment } from '../../../src/io/shareLink.ts';
import { parseDesignText } from '../../../src/model/designText.ts';
import { exampleById, examples } from '../../../src/model/examples/examples.ts';

const eight = exampleById('eightResistors');

describe('a link that holds a design', () => {
  test.each(examples.map(({ design }) => [design.title, design] as const))(
    'brings “%s” back to the last bit',
    async (_, design) => {
      const fragment = await designFragment(design);
      expect(holdsDesign(fragment)).toBe(true);
      expect(fragment).toMatch(/^#box1=[\w-]+$/);
      const read = await readFragment(fragment);
      const parsed = read.ok ? parseDesignText(read.text) : null;
      expect(parsed?.ok && parsed.design).toEqual(design);
    },
  );

  test('is short enough for a message: a row of eight in less than 3000 characters', async () => {
    expect((await designFragment(eight)).length).toBeLessThan(3000);
  });

  test('is refused where any one character of it was changed, or where it was cut', async () => {
    const fragment = await designFragment(eight);
    for (let at = '#box1='.length; at < fragment.length - 1; at += 37) {
      const other = fragment[at] === 'A' ? 'B' : 'A';
      const changed = fragment.slice(0, at) + other + fragment.slice(at + 1);
      const read = await readFragment(changed);
      // A few bits of the gzip header say nothing of the content (time, system).
      if (read.ok) expect(parseDesignText(read.text)).toMatchObject({ ok: true, design: eight });
      else expect(read.reason).toMatch(/^The link is damaged/);
    }
    for (const length of [6, 7, 40, fragment.length - 4])
      expect(await readFragment(fragment.slice(0, length))).toMatchObject({ ok: false });
    expect(await readFragment('#box1=not a link!')).toMatchObject({ ok: false });
  });

  test('is refused where it would unpack to more than a design file may have', async () => {
    const bytes = new Blob(['a'.repeat(20_000_000)]).stream().pipeThrough(new CompressionStream('gzip'));
    const packed = Buffer.from(await new Response(bytes).arrayBuffer()).toString('base64url');
    expect(await readFragment(`#box1=${packed}`)).toEqual({
      ok: false,
      reason: 'What this link unpacks to is larger than any design.',
    });
  });
});
