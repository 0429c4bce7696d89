import type { Page } from 'playwright';

/** What can be pressed or typed into, and reached by Tab. */
const controls =
  'a[href], button, input:not([type="hidden"]), select, textarea, summary, [tabindex="0"], [role="button"]';

/**
 * Controls smaller than 24 × 24 px that have no room around them either. A control and its label are one target;
 * one that is small counts if a circle of 24 px about its middle meets no other: WCAG 2.2, success criterion 2.5.8. Links
 * within a sentence are exempt there.
 */
export function smallTargets(page: Page, within: string): Promise<{ all: number; small: string[] }> {
  return page.evaluate(
    ([selector, place]) => {
      // What lies under a dialog can be neither pressed nor reached.
      const reachable = document.querySelector('dialog:modal') ?? document.querySelector(place) ?? document;
      const union = (boxes: readonly DOMRect[]) => {
        const left = Math.min(...boxes.map((box) => box.left));
        const top = Math.min(...boxes.map((box) => box.top));
        const right = Math.max(...boxes.map((box) => box.right));
        const bottom = Math.max(...boxes.map((box) => box.bottom));
        return new DOMRect(left, top, right - left, bottom - top);
      };
      const targets = [...reachable.querySelectorAll<HTMLElement>(selector)]
        .filter((each) => each.checkVisibility({ visibilityProperty: true }) && !each.closest('p a, li a'))
        .map((element) => {
          const labels = 'labels' in element ? [...((element.labels as NodeListOf<HTMLElement>) ?? [])] : [];
          const around = labels.filter((label) => label.contains(element));
          const own = element.classList.contains('unseen') ? [] : [element];
          const boxes = [...own, ...around].map((each) => each.getBoundingClientRect());
          return boxes.length === 0 ? null : { element, box: union(boxes) };
        })
        .filter((each) => each !== null && each.box.width > 2 && each.box.height > 2)
        .flatMap((each) => (each === null ? [] : [each]));
      const isSmall = (box: DOMRect) => box.width < 23.99 || box.height < 23.99;
      const gap = (box: DOMRect, x: number, y: number) =>
        Math.hypot(Math.max(box.left - x, 0, x - box.right), Math.max(box.top - y, 0, y - box.bottom));
      const small = targets.filter(({ element, box }) => {
        if (!isSmall(box)) return false;
        const [x, y] = [box.left + box.width / 2, box.top + box.height / 2];
        return targets.some((other) => {
          if (other.element === element || other.element.contains(element) || element.contains(other.element))
            return false;
          const [otherX, otherY] = [
            other.box.left + other.box.width / 2,
            other.box.top + other.box.height / 2,
          ];
          return gap(other.box, x, y) < 12 || (isSmall(other.box) && Math.hypot(otherX - x, otherY - y) < 24);
        });
      });
      return {
        all: targets.length,
        small: small.map(
          ({ element, box }) =>
            `${element.outerHTML.slice(0, 90)} ${box.width.toFixed(0)} × ${box.height.toFixed(0)}`,
        ),
      };
    },
    [controls, within] as const,
  );
}

/**
 * Gives the focus to every stop of the Tab key in turn, and compares how it, its label and what is around it look with
 * and without. A key has to have been pressed before, or the browser shows the focus to nobody.
 * @returns how many stops there are, and those that look the same
 */
export function unseenFocus(page: Page, within: string): Promise<{ all: number; unseen: string[] }> {
  return page.evaluate(
    ([selector, place]) => {
      const look = (element: Element) => {
        const style = getComputedStyle(element);
        const outline =
          style.outlineStyle === 'none' || style.outlineWidth === '0px'
            ? 'none'
            : `${style.outlineStyle} ${style.outlineWidth} ${style.outlineColor}`;
        const { borderTopColor, boxShadow, backgroundColor, stroke, strokeWidth, fill } = style;
        const { top } = element.getBoundingClientRect();
        // A link that comes into view shows itself too.
        return [
          outline,
          borderTopColor,
          boxShadow,
          backgroundColor,
          stroke,
          strokeWidth,
          fill,
          top < 0,
        ].join();
      };
      // Beside an open dialog nothing can be reached.
      const reachable = document.querySelector('dialog:modal') ?? document.querySelector(place) ?? document;
      const stops = [...reachable.querySelectorAll<HTMLElement>(selector)].filter(
        (each) =>
          each.tabIndex >= 0 &&
          !each.matches(':disabled') &&
          each.checkVisibility({ visibilityProperty: true }),
      );
      const unseen = stops.filter((stop) => {
        stop.focus({ preventScroll: true });
        if (document.activeElement !== stop) return true;
        const labels = 'labels' in stop ? [...((stop.labels as NodeListOf<HTMLElement>) ?? [])] : [];
        const shown = [stop, ...labels, stop.parentElement, ...stop.querySelectorAll('*')].filter(
          (each) => each !== null,
        );
        const focused = shown.map(look);
        stop.blur();
        return shown.map(look).every((each, index) => each === focused[index]);
      });
      return { all: stops.length, unseen: unseen.map((stop) => stop.outerHTML.slice(0, 120)) };
    },
    [controls, within] as const,
  );
}

/** What makes the page wider than the window; what scrolls in a box of its own does not. */
export function tooWide(page: Page): Promise<string[]> {
  return page.evaluate(() => {
    const edge = document.documentElement.clientWidth;
    if (document.documentElement.scrollWidth <= edge) return [];
    const wide = [...document.querySelectorAll('body *')].filter(
      (element) => element.getBoundingClientRect().right > edge + 0.5,
    );
    return [
      `${document.documentElement.scrollWidth} px`,
      ...wide.map((each) => each.outerHTML.slice(0, 120)),
    ];
  });
}
