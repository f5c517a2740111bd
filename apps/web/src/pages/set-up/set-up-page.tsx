import './styles/set-up.css';
import { useEffect, useRef } from 'react';
import { Link } from 'wouter';
import { useCalendar } from '../../api/index.js';
import type { PageProps } from '../../pages.js';
import { MessageLine, PrintedFoot, TitleBlock } from '../../ui/index.js';
import { BeginPage } from './begin/begin-page.js';
import { FilesPage } from './files/files-page.js';
import { KeptPage } from './kept/kept-page.js';
import { LimitsPage } from './limits/limits-page.js';
import { Overview } from './overview.js';
import { AuditPage } from './people/audit-page.js';
import { PeoplePage } from './people/people-page.js';
import { SignaturesPage } from './people/signatures-page.js';
import { ProgrammeTotals } from './programme-totals.js';
import { groups, sections } from './sections.js';

const others: readonly (readonly [name: string, title: string])[] = [
  ['people', 'People'],
  ['signatures', 'Waiting for signatures'],
  ['audit', 'Audit'],
  ['files', 'Files, CSV'],
];

/** Everything that people keep: nothing needs an edited file. */
export const SetUpPage = ({ at }: PageProps) => {
  const { operatingDate } = useCalendar();
  const [name, ...rest] = at;
  const title =
    name === undefined
      ? operatingDate
      : name === 'begin'
        ? 'A first territory, step by step'
        : ([...sections.map((section) => [section.name, section.title] as const), ...others].find(
            ([known]) => known === name,
          )?.[1] ?? 'No such page');
  return (
    <>
      <TitleBlock title="Set-up" sub={title} />
      <div className={name === 'begin' ? 'set-up set-up-alone' : 'set-up'}>
        {name !== 'begin' && <SectionList current={name} />}
        <div className="set-up-work">
          <Work name={name} rest={rest} />
        </div>
      </div>
      <PrintedFoot>
        A later print replaces it: throw this one away then. Planning figures: the commander's approved data
        decide.
      </PrintedFoot>
    </>
  );
};

const Work = ({ name, rest }: { readonly name: string | undefined; readonly rest: readonly string[] }) => {
  if (name === undefined) return <Overview />;
  if (name === 'begin') return <BeginPage at={rest} />;
  if (name === 'strip-limits') return <LimitsPage />;
  if (name === 'people') return <PeoplePage />;
  if (name === 'signatures') return <SignaturesPage />;
  if (name === 'audit') return <AuditPage />;
  if (name === 'files') return <FilesPage />;
  const section = sections.find((each) => each.name === name);
  if (section === undefined)
    return <MessageLine what={`Set-up has no page "${name}"`} next="Choose one from the list at the left." />;
  return (
    <>
      <KeptPage key={name} section={section} at={rest[0]} />
      {name === 'programmes' && rest.length === 0 && <ProgrammeTotals />}
    </>
  );
};

const SectionList = ({ current }: { readonly current: string | undefined }) => {
  const list = useRef<HTMLElement>(null);
  useEffect(() => {
    if (current !== undefined)
      list.current?.querySelector('[aria-current]')?.scrollIntoView({ block: 'nearest' });
  }, [current]);
  const link = (name: string, title: string) => (
    <li key={name}>
      <Link
        href={`/set-up${name === '' ? '' : `/${name}`}`}
        aria-current={name === (current ?? '') ? 'page' : undefined}
      >
        {title}
      </Link>
    </li>
  );
  return (
    <nav ref={list} className="set-up-sections" aria-label="Set-up">
      <ul>{link('', 'Where it stands')}</ul>
      {groups.map(([heading, each]) => (
        <section key={heading}>
          <h2>{heading}</h2>
          <ul>{each.map(({ name, title }) => link(name, title))}</ul>
        </section>
      ))}
      <section>
        <h2>Installation</h2>
        <ul>{others.map(([name, title]) => link(name, title))}</ul>
      </section>
    </nav>
  );
};
