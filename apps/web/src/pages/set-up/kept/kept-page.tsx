import { usualParticulars } from '@drumline/loading';
import type { ReactNode } from 'react';
import { useLocation } from 'wouter';
import { useList, useMay } from '../../../api/index.js';
import { Picture } from '../../../ui/index.js';
import { faultsOfOne, nameIn, type Section } from '../sections.js';
import { type KeptLine, lineSchema, useCurrency, useServerKeeper } from './kept.js';
import { KeptList } from './kept-list.js';
import { ParticularsPreview, TieDownPreview } from './previews.js';
import { Touched } from './touched.js';
import { TouchedFlights } from './touched-flights.js';
import { mayTouchFlights } from './touched-read.js';
import { askWords } from './who-enters.js';

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
    <>
      {section.list === 'dangerousGoods' && lines.length === 0 && (
        <p className="read">
          None kept yet: load sheets carry the usual fields below and say that they are not the operator’s.
        </p>
      )}
      <KeptList
        section={section}
        keeper={keeper}
        at={at}
        open={(id) => go(`/set-up/${section.name}${id === undefined ? '' : `/${encodeURIComponent(id)}`}`)}
        currency={useCurrency()}
        offBecause={mayChange ? undefined : askWords(section.act)}
        consequence={consequenceOf(section)}
        begin={section.list === 'dangerousGoods' ? usual : undefined}
      />
    </>
  );
};

/** What a change would do, said before it is made. */
const consequenceOf = (
  section: Section,
): ((data: unknown, line: KeptLine | null) => ReactNode) | undefined => {
  if (section.list === 'tieDown') return (data) => <TieDownPreview section={section} data={data} />;
  if (section.list === 'dangerousGoods')
    return (data) => <ParticularsPreview section={section} data={data} />;
  if (mayTouchFlights(section.name))
    return (data, line) =>
      // Not filled in yet: what is wrong is said when it is saved.
      faultsOfOne(section, data).length > 0 ? null : (
        <TouchedFlights kind={section.name} id={line?.id ?? nameIn(section, data) ?? 'new'} data={data} />
      );
  return touchesCaches.includes(section.name)
    ? (data, line) => <Touched kind={section.name} data={data} line={line} />
    : undefined;
};

/** What changes the projection of caches by itself. */
const touchesCaches: readonly string[] = ['helicopter-tasks', 'slings', 'caches'];

/** The fields that stand on load sheets until the operator has given its own; reference and contact are left to be written. */
const usual = { ...usualParticulars, reference: '', emergencyContact: '' };
