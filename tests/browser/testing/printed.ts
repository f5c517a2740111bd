import type { Page } from 'playwright-core';

/** What a press prints beside the page: the file as the server gives it, caught before the browser's own viewer opens it. */
export const printed = async (
  page: Page,
  press: () => Promise<void>,
): Promise<{ readonly name: string; readonly begins: string; readonly content: Buffer }> => {
  const context = page.context();
  const pdf = new Promise<{ readonly disposition: string; readonly content: Buffer }>((resolve) => {
    void context.route('**/*.pdf*', async (route) => {
      const answer = await route.fetch();
      resolve({
        disposition: answer.headers()['content-disposition'] ?? '',
        content: await answer.body(),
      });
      await route.fulfill({ status: 200, contentType: 'text/plain', body: 'printed' });
    });
  });
  await press();
  const { disposition, content } = await pdf;
  return {
    name: /filename="([^"]+)"/.exec(disposition)?.[1] ?? '',
    begins: content.subarray(0, 5).toString('latin1'),
    content,
  };
};
