/** All text that a page holds for a reader or for a screen reader, seen or not. */
import type { Page } from 'playwright-core';
import { unmarked } from '../words/mark.ts';

/** Attributes that are shown or read out. */
const attributes = [
  ...['alt', 'label', 'placeholder', 'title', 'aria-description', 'aria-label'],
  ...['aria-placeholder', 'aria-roledescription', 'aria-valuetext'],
];

/** A text of the page and where it stands. */
interface PageText {
  readonly place: string;
  readonly text: string;
}

/** Addresses, and dates, which the browser writes in the language of the words where it knows it. */
const machine = /\bhttps?:\S+|\b[A-Z][a-z]{2} \d{1,2}, \d{4}(, \d{1,2}:\d\d\s[AP]M)?/g;

/**
 * What on the page now has letters in it and no mark, each with its place: texts, attributes, what is typed in
 * fields, what style sheets put in, the title, texts of printed pages, and every name, description and value
 * of the accessibility tree. `own` is the test's own, as the name of a file that it gave.
 */
export async function unmarkedTexts(page: Page, own: string): Promise<readonly string[]> {
  const told = [...(await textsOf(page)), ...(await accessibleTexts(page))];
  const bare = told.map(({ place, text }) => {
    const rest = unmarked(text.replace(machine, '').replaceAll(own, ''));
    return rest === '' ? '' : `${place}: ${rest}`;
  });
  return [...new Set(bare)].filter((one) => one !== '');
}

function textsOf(page: Page): Promise<readonly PageText[]> {
  return page.evaluate((attributes) => {
    const told: { place: string; text: string }[] = [{ place: 'title', text: document.title }];
    const placeOf = (one: Element) => {
      const name = one.getAttribute('class')?.split(' ')[0];
      return name ? `${one.localName}.${name}` : one.localName;
    };
    const isPicture = (one: Element) => one.closest('.print-page') !== null;
    for (const one of document.body.querySelectorAll('*')) {
      if (one.matches('script, style, noscript, noscript *')) continue;
      const place = placeOf(one);
      for (const name of attributes) {
        const text = one.getAttribute(name);
        if (text) told.push({ place: `${place} ${name}`, text });
      }
      for (const pseudo of ['::before', '::after']) {
        const { content } = getComputedStyle(one, pseudo);
        if (/^"/.test(content)) told.push({ place: `${place}${pseudo}`, text: content });
      }
      const isTyped = one instanceof HTMLTextAreaElement || one.matches('input:not([type])');
      if (isTyped || one.matches('[type=text], [type=search], [type=button], [type=submit]'))
        told.push({ place: `${place} value`, text: (one as HTMLInputElement).value });
      if (isPicture(one)) continue;
      for (const node of one.childNodes) {
        if (node.nodeType === Node.TEXT_NODE) told.push({ place, text: node.nodeValue ?? '' });
      }
    }
    // a sentence of a printed page is a text for every line of it
    for (const printed of document.querySelectorAll('.print-page')) {
      const lines = [...printed.querySelectorAll('text')].map((one) => one.textContent ?? '');
      const text = lines.join(' ').replace(/\b[A-Z]\d(·\d)?\b/g, '');
      told.push({ place: 'printed page', text });
    }
    return told;
  }, attributes);
}

async function accessibleTexts(page: Page): Promise<readonly PageText[]> {
  const session = await page.context().newCDPSession(page);
  try {
    const { nodes } = await session.send('Accessibility.getFullAXTree');
    return nodes
      .filter(({ ignored, role }) => !ignored && !isTextItself(`${role?.value}`))
      .flatMap(({ role, name, description, value }) =>
        [name, description, value].map((one) => ({
          place: `as ${role?.value}`,
          text: `${one?.value ?? ''}`,
        })),
      );
  } finally {
    await session.detach();
  }
}

/** Pieces of text, which are told as texts already, and the page as a whole with its address. */
function isTextItself(role: string): boolean {
  return ['StaticText', 'InlineTextBox', 'LineBreak'].includes(role);
}
