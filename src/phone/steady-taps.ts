/**
 * A finger that trembles still means the button it went down on. Browsers drop a tap that moved a few pixels; here one
 * that comes up on its button, not far from where it went down, is taken. One that slides off is not.
 */

/** CSS pixels a finger may move and still have meant to tap. */
const WOBBLE = 20;
/** A browser's own click of the same touch comes within so many milliseconds. */
const SAME_MS = 700;

interface Down {
  readonly pointer: number;
  readonly button: HTMLElement;
  readonly x: number;
  readonly y: number;
}

const buttonAt = (target: EventTarget | null): HTMLElement | null =>
  target instanceof Element ? target.closest('button') : null;

export function steadyTaps(root: HTMLElement): void {
  let down: Down | null = null;
  let taken: { readonly at: number } | null = null;

  root.addEventListener('pointerdown', ({ pointerId, pointerType, target, clientX, clientY, isPrimary }) => {
    const button = buttonAt(target);
    down =
      pointerType === 'touch' && isPrimary && button !== null
        ? { pointer: pointerId, button, x: clientX, y: clientY }
        : null;
  });
  root.addEventListener('pointercancel', () => {
    down = null;
  });
  root.addEventListener('pointerup', ({ pointerId, clientX, clientY, timeStamp }) => {
    const began = down;
    down = null;
    if (began === null || began.pointer !== pointerId || !began.button.isConnected) return;
    const far = Math.hypot(clientX - began.x, clientY - began.y) > WOBBLE;
    const over = buttonAt(document.elementFromPoint(clientX, clientY)) === began.button;
    if (far || !over) return;
    taken = { at: timeStamp };
    began.button.click();
  });
  // The browser's own click for a touch that was taken already: wherever it lands, it was meant for that button.
  root.addEventListener(
    'click',
    (event) => {
      if (!event.isTrusted || taken === null || event.detail === 0) return;
      const same = event.timeStamp - taken.at < SAME_MS;
      taken = null;
      if (!same) return;
      event.stopPropagation();
      event.preventDefault();
    },
    true,
  );
}
