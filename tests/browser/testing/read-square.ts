import jsQR from 'jsqr';
import type { Page } from 'playwright-core';

/** What another phone reads off this one: a picture of the screen, read by another program than the one that drew it. */
export const readSquare = async (page: Page): Promise<string | null> => {
  const picture = (await page.screenshot()).toString('base64');
  const { width, height, pixels } = await page.evaluate(pixelsOf, picture);
  return jsQR.default(Uint8ClampedArray.from(Buffer.from(pixels, 'base64')), width, height)?.data ?? null;
};

/** Runs in the page. */
const pixelsOf = async (picture: string) => {
  const image = new Image();
  image.src = `data:image/png;base64,${picture}`;
  await image.decode();
  const canvas = new OffscreenCanvas(image.width, image.height);
  const drawing = canvas.getContext('2d')!;
  drawing.drawImage(image, 0, 0);
  const { data } = drawing.getImageData(0, 0, image.width, image.height);
  let text = '';
  for (const byte of data) text += String.fromCharCode(byte);
  return { width: image.width, height: image.height, pixels: btoa(text) };
};
