import { type RefObject, startTransition, useEffect, useState } from 'react';

const listeners = new WeakMap<Element, () => void>();
let observer: IntersectionObserver | undefined;

/** One for all cells; what comes within a screen's half of the window is told once. */
const watch = (element: Element, onNear: () => void): (() => void) => {
  observer ??= new IntersectionObserver(
    (entries) => {
      for (const { isIntersecting, target } of entries) if (isIntersecting) listeners.get(target)?.();
    },
    { rootMargin: '50% 0%' },
  );
  listeners.set(element, onNear);
  observer.observe(element);
  return () => {
    listeners.delete(element);
    observer?.unobserve(element);
  };
};

/** Whether an element has come near the window: graphs far down the page are drawn when they are about to be seen. */
export const useWasNear = (element: RefObject<Element | null>): boolean => {
  const [wasNear, setNear] = useState(false);
  useEffect(() => {
    if (wasNear) return;
    return watch(element.current!, () => startTransition(() => setNear(true)));
  }, [element, wasNear]);
  return wasNear;
};
