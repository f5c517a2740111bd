import { lazy, Suspense, useEffect, useRef, useState } from 'react';

/** When the first page has been read. */
const fromMs = 8_000;
/** As long as reading takes on a slow line: in between, a change makes nothing be read again. */
const forMs = 50_000;
/** What has changed since, a plan accepted above all, is read again. */
const everyMs = 10 * 60_000;

/**
 * What lines of Radio and paper are read by, whichever page is open: they can be kept though nobody has opened that
 * page before base falls silent.
 */
export const ReadAhead = () => {
  const [isOn, setOn] = useState(false);
  const isFirst = useRef(true);
  useEffect(() => {
    const timer = setTimeout(() => setOn(!isOn), isOn ? forMs : isFirst.current ? fromMs : everyMs);
    if (isOn) isFirst.current = false;
    return () => clearTimeout(timer);
  }, [isOn]);
  return isOn ? (
    <Suspense>
      <SheetRead />
    </Suspense>
  ) : null;
};

const Nothing = () => null;

/** Not of the first page's program. Out of reach, there is nothing to read either. */
const SheetRead = lazy(() =>
  import('../pages/morning/paper/sheet-read.js').then(
    ({ SheetRead: read }) => ({ default: read }),
    () => ({ default: Nothing }),
  ),
);
