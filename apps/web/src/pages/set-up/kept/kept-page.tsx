import { useLocation } from 'wouter';
import { useList, useMay } from '../../../api/index.js';
import { Picture } from '../../../ui/index.js';
import type { Section } from '../sections.js';
import { type KeptLine, lineSchema, useCurrency, useServerKeeper } from './kept.js';
import { KeptList } from './kept-list.js';
import { Touched } from './touched.js';

/** What is kept of one kind, on the server. */
export const KeptPage = ({ section, at }: { readonly section: Section; readonly at: string | undefined }) => (
  <Picture read={useList(`/api/${section.name}`, lineSchema)}>
    {(lines) => <Kept section={section} at={at} lines={lines} />}
  </Picture>
);

interface KeptProps {
  readonly section: Section;
  readonly at: string | undefined;
  readonly lines: readonly KeptLine[];
}

const Kept = ({ section, at, lines }: KeptProps) => {
  const [, go] = useLocation();
  const keeper = useServerKeeper(section, lines);
  const mayChange = useMay()(section.act, 'enter');
  return (
    <KeptList
      section={section}
      keeper={keeper}
      at={at}
      open={(id) => go(`/set-up/${section.name}${id === undefined ? '' : `/${encodeURIComponent(id)}`}`)}
      currency={useCurrency()}
      offBecause={mayChange ? undefined : 'Your role looks at it only.'}
      consequence={
        touchesCaches.includes(section.name)
          ? (data, line) => <Touched kind={section.name} data={data} line={line} />
          : undefined
      }
    />
  );
};

/** What changes the projection of caches by itself. */
const touchesCaches: readonly string[] = ['helicopter-tasks', 'slings', 'caches'];
