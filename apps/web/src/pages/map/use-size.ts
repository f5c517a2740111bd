import { type RefObject, useLayoutEffect, useState } from 'react';

interface Size {
  readonly width: number;
  readonly height: number;
}

/** How large an element is, measured again when that changes. */
export const useSize = (element: RefObject<HTMLElement | null>): Size => {
  const [size, setSize] = useState<Size>({ width: 900, height: 640 });
  useLayoutEffect(() => {
    const area = element.current!;
    const measure = () => {
      const next = { width: area.clientWidth, height: area.clientHeight };
      setSize((last) => (last.width === next.width && last.height === next.height ? last : next));
    };
    measure();
    const observer = new ResizeObserver(measure);
    observer.observe(area);
    return () => observer.disconnect();
  }, [element]);
  return size;
};
