/** What holds of every training screen, whatever it shows. */
import type { Page } from 'playwright-core';
import { axeFaults } from './axe.js';

/**
 * What is wrong with the screen that stands: by the rules of axe-core with the stricter contrast (WCAG 2.2, 1.4.6), by its
 * width, by the height of what can be tapped, by filled buttons and controls of the bar, and by the length of what is said. Words
 * of an exercise's author are not counted.
 */
export async function faultsOf(page: Page): Promise<readonly string[]> {
  const violations = await axeFaults(page, { within: '#training', strictContrast: true });
  const others = await page.evaluate(() => {
    const all = (selector: string): readonly Element[] => [...document.querySelectorAll(`#training ${selector}`)];
    const bar = document.querySelector('#training .bar');
    const top = bar?.getBoundingClientRect().top ?? innerHeight;
    const held = document.activeElement;
    const beneath = held !== null && held.closest('.bar') === null && held.getBoundingClientRect().top > top;
    const share = (bar?.getBoundingClientRect().height ?? 0) / innerHeight;
    const authors = '.of-the-day, .around-lines, .stop, .why, .heard, .paper, .asked';
    return [
      ...(document.documentElement.scrollWidth > innerWidth ? ['wider than the phone'] : []),
      ...(all('.filled').length > 1 ? ['two filled buttons'] : []),
      ...((bar?.querySelectorAll('button, a').length ?? 0) > 3 ? ['more than three controls in the bar'] : []),
      ...(share > 0.4 ? [`a bar of ${Math.round(100 * share)} %`] : []),
      ...(beneath ? ['what has the focus lies beneath the bar'] : []),
      ...[...all('button'), ...all('a.tap')]
        .map((one) => ({ text: one.textContent, height: one.getBoundingClientRect().height }))
        .filter(({ height }) => height > 0 && height < 52)
        .map(({ text, height }) => `${text}: ${height} px high`),
      ...[...all('p'), ...all('button'), ...all('h2')]
        .filter((one) => one.closest(authors) === null)
        .flatMap((one) => (one.textContent ?? '').split(/(?<=[.!?])\s/))
        .filter((sentence) => sentence.trim().split(/\s+/).length > 12)
        .map((sentence) => `too long: ${sentence}`),
    ];
  });
  return [...violations, ...others];
}

/** On each set's screen that stands in the page: texts that are as large as what is to be done, or larger. */
export const rivalsOf = (page: Page): Promise<readonly string[]> =>
  page.evaluate(() => {
    const sizeOf = (one: Element): number => Number.parseFloat(getComputedStyle(one).fontSize);
    const isSeen = (one: Element): boolean => one.getClientRects().length > 0 && !one.classList.contains('heard');
    return [...document.querySelectorAll('#training .training-sheet.set')].flatMap((sheet) => {
      const load = sheet.querySelector('.load');
      if (load === null || !isSeen(load)) return [];
      return [...sheet.querySelectorAll('.training-page p, h2')]
        .filter((one) => one !== load && isSeen(one) && sizeOf(one) >= sizeOf(load))
        .map((one) => `${one.textContent} beside ${load.textContent}`);
    });
  });
