import type { Page } from 'playwright-core';

/** Drops a file on the page. */
export async function dropped(page: Page, name: string, bytes: Buffer): Promise<void> {
  const transfer = await page.evaluateHandle(
    ([name, content]) => {
      const data = Uint8Array.from(atob(content), (letter) => letter.charCodeAt(0));
      const transfer = new DataTransfer();
      transfer.items.add(new File([data], name));
      return transfer;
    },
    [name, bytes.toString('base64')] as const,
  );
  await page.dispatchEvent('body', 'dragover', { dataTransfer: transfer });
  await page.dispatchEvent('body', 'drop', { dataTransfer: transfer });
}
