/**
 * Has a service worker keep the whole program for where base does not answer, once the first page is there to be used. Only
 * over HTTPS, and on the machine itself; elsewhere, or where the browser keeps nothing, a page needs base to open.
 */
export const keepProgram = async (
  worker: string,
  scope: string,
): Promise<ServiceWorkerRegistration | undefined> => {
  if (!('serviceWorker' in navigator) || !import.meta.env.PROD) return undefined;
  if (document.readyState !== 'complete')
    await new Promise((resolve) => window.addEventListener('load', resolve, { once: true }));
  return navigator.serviceWorker.register(worker, { scope }).catch(() => undefined);
};
