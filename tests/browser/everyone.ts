/** What a page must be so that everyone can use it: each function names what is wrong, or nothing. */
import { AxeBuilder } from '@axe-core/playwright';
import type { Page } from 'playwright-core';

/** A view of the app, and how one comes to it from the one before. */
export interface View {
  readonly name: string;
  readonly go: (page: Page) => Promise<unknown>;
  /** What is new in it, for axe; default the whole page. */
  readonly within?: string;
  /** It closes as the focus goes on, or stands beside what was looked at before: no going through by Tab. */
  readonly isOver?: boolean;
  /** Least size of what is pressed, CSS px; default 24. */
  readonly least?: number;
}

/** What is wrong with each of the views gone through: with `places` only size and place of controls. */
export async function faultsOf(
  page: Page,
  views: readonly View[],
  what: 'all' | 'places',
): Promise<Readonly<Record<string, readonly string[]>>> {
  const wrong: Record<string, readonly string[]> = {};
  for (const { name, go, within, isOver = false, least = 24 } of views) {
    await go(page);
    // first, while nothing has been scrolled away or closed by going on
    const faults = what === 'all' ? [...(await axeFinds(page, within))] : [];
    faults.push(...(await tooSmall(page, least)));
    if (!isOver) faults.push(...(await cutOff(page)));
    if (what === 'all' && !isOver) faults.push(...(await badStops(page)));
    if (faults.length > 0) wrong[name] = faults;
  }
  return wrong;
}

/**
 * Serious and critical findings of axe in `within`, each with the places it is at. Printed pages are
 * pictures to it.
 */
async function axeFinds(page: Page, within = 'body'): Promise<readonly string[]> {
  const { violations } = await new AxeBuilder({ page })
    .include(within)
    .exclude('.print-page')
    .options({ rules: { 'target-size': { enabled: true } } })
    .analyze();
  return violations
    .filter(({ impact }) => impact === 'serious' || impact === 'critical')
    .map(
      ({ id, nodes }) =>
        `${id}: ${nodes.map(({ target, failureSummary }) => `${target} ${failureSummary}`).join('; ')}`,
    );
}

const controls =
  'button, select, textarea, input:not([type=hidden]), a[href], summary, [role=slider], [role=tab]';

/** Controls smaller than `least` each way, CSS px. A tick or a dot counts with the label around it. */
function tooSmall(page: Page, least: number): Promise<readonly string[]> {
  return page.evaluate(
    ({ controls, least }) => {
      const within = document.querySelector('dialog:modal') ?? document;
      return [...within.querySelectorAll(controls)].flatMap((one) => {
        if (!one.checkVisibility({ visibilityProperty: true }) || one.closest('.unseen')) return [];
        const target = one.matches('[type=checkbox], [type=radio]')
          ? (one.closest('label') ?? one)
          : one;
        const { width, height } = target.getBoundingClientRect();
        // a hair less is the browser's rounding
        if (width === 0 || Math.min(width, height) > least - 0.02) return [];
        const name = one.getAttribute('aria-label') ?? one.textContent?.trim() ?? '';
        return [`${one.localName} “${name || one.id}”: ${width} × ${height}`];
      });
    },
    { controls, least },
  );
}

/** That the page is wider than the window, and every control that cannot be seen whole or reached. */
function cutOff(page: Page): Promise<readonly string[]> {
  return page.evaluate((controls) => {
    const wide = document.documentElement.scrollWidth;
    const found = wide > innerWidth ? [`the page is ${wide} wide in ${innerWidth}`] : [];
    const within = document.querySelector('dialog:modal') ?? document;
    for (const one of within.querySelectorAll(controls)) {
      if (!one.checkVisibility({ visibilityProperty: true }) || one.closest('.unseen')) continue;
      one.scrollIntoView({ block: 'center', inline: 'center' });
      const { left, right, top, bottom, width, height } = one.getBoundingClientRect();
      if (width === 0) continue;
      const name = `${one.localName} “${one.getAttribute('aria-label') ?? one.textContent?.trim() ?? ''}”`;
      const isOver = left < -1 || right > innerWidth + 1 || top < -1 || bottom > innerHeight + 1;
      // a point of the line may reach over the edge of its chart; its middle may not
      if (isOver && !(one instanceof SVGElement)) {
        found.push(`${name} lies over the edge: ${[left, top, right, bottom].map(Math.round)}`);
        continue;
      }
      const at = document.elementFromPoint(left + width / 2, top + height / 2);
      // the card of the tour lies where it may, and goes with Escape
      const isThere =
        at &&
        (one.contains(at) ||
          at.contains(one) ||
          one.closest('label') === at ||
          at.closest('.tour-card') !== null);
      if (!isThere && !one.matches('[disabled]'))
        found.push(`${name} lies under ${at?.outerHTML.slice(0, 120)}`);
      if (one instanceof HTMLButtonElement && one.scrollWidth > one.clientWidth + 1)
        found.push(`${name} is wider than itself`);
    }
    scrollTo(0, 0);
    return found;
  }, controls);
}

/**
 * Goes through the page by Tab until it comes round, and names every stop that has no name, no visible
 * mark of the focus, or lies out of sight; every control that was not come to; or that it never comes
 * round.
 */
async function badStops(page: Page): Promise<readonly string[]> {
  const bad: string[] = [];
  await page.evaluate((controls) => {
    if (document.activeElement instanceof HTMLElement) document.activeElement.blur();
    for (const one of document.querySelectorAll('[data-stop], [data-wanted]')) {
      one.removeAttribute('data-stop');
      one.removeAttribute('data-wanted');
    }
    const within = document.querySelector('dialog:modal') ?? document;
    for (const one of within.querySelectorAll(controls)) {
      const isOff = one.matches('[disabled], [tabindex="-1"], [type=radio]');
      one.toggleAttribute(
        'data-wanted',
        one.checkVisibility({ visibilityProperty: true }) && !isOff,
      );
    }
  }, controls);
  let isRound = false;
  for (let press = 0; press < 400 && !isRound; press += 1) {
    await page.keyboard.press('Tab');
    const said = await page.evaluate(wrongWithFocus);
    isRound = said === null;
    if (said) bad.push(said);
  }
  if (!isRound) bad.push('Tab never comes round');
  const missed = await page.evaluate(() =>
    [...document.querySelectorAll('[data-wanted]:not([data-stop])')].map(
      (one) => `${one.outerHTML.slice(0, 120)}: not come to by Tab`,
    ),
  );
  const stops = await page.locator('[data-stop]').count();
  return [...bad, ...missed, ...(stops < 2 ? [`only ${stops} stops for Tab`] : [])];
}

/** What is wrong with where the focus is, or nothing; null where it has been before. Runs in the page. */
function wrongWithFocus(): string | null {
  const one = document.activeElement;
  // the browser's own place between the end of the page and its beginning
  if (!one || one === document.body) return '';
  if (one.hasAttribute('data-stop')) return null;
  one.setAttribute('data-stop', '');
  const { outlineStyle, outlineWidth } = getComputedStyle(one);
  const halo = one.querySelector('.girth-halo');
  const hasMark =
    (outlineStyle !== 'none' && Number.parseFloat(outlineWidth) >= 2) ||
    (halo && getComputedStyle(halo).stroke !== 'none') ||
    one.closest('.pad-value:focus-within');
  const labels = 'labels' in one && one.labels instanceof NodeList ? one.labels : [];
  const labelledBy = one.getAttribute('aria-labelledby');
  const hasName = [
    one.getAttribute('aria-label'),
    labelledBy && document.getElementById(labelledBy)?.textContent,
    labels[0]?.textContent,
    one.textContent,
    one.getAttribute('title'),
  ].some((name) => name?.trim());
  const { left, right, top, bottom } = one.getBoundingClientRect();
  const x = (Math.max(0, left) + Math.min(innerWidth, right)) / 2;
  const isInSight = [0.2, 0.5, 0.8].some((share) => {
    const [from, to] = [Math.max(0, top), Math.min(innerHeight, bottom)];
    const seen = document.elementFromPoint(x, from + share * (to - from));
    return seen && (one.contains(seen) || seen.contains(one) || seen.closest('.tour-card'));
  });
  const wrong = [
    hasMark ? '' : 'no mark of the focus',
    hasName ? '' : 'no name',
    isInSight ? '' : 'out of sight',
  ].filter((fault) => fault !== '');
  return wrong.length > 0 ? `${one.outerHTML.slice(0, 120)}: ${wrong.join()}` : '';
}
