import './styles/drums.css';
import { useState } from 'react';
import { useCalendar, useList, useMay, useNotSetUpYet, useRead } from '../../api/index.js';
import { CountForm } from '../../counting/count-form.js';
import type { PageProps } from '../../pages.js';
import {
  Button,
  EmptyLine,
  Field,
  figure,
  inWords,
  MessageLine,
  SlipLinks,
  TitleBlock,
} from '../../ui/index.js';
import { FillForm } from './acts/fill-form.js';
import { JoinForm } from './acts/join-form.js';
import { type Address, useAddress } from './address.js';
import { DrumCard } from './drum-card.js';
import { drumSchema, elsewherePath, type Stock, stockSchema } from './drums-read.js';
import { Finder } from './finder.js';
import { HoldSheet } from './hold/hold-sheet.js';
import { ShownView } from './views/shown-view.js';

export const DrumsPage = ({ at }: PageProps) => {
  const address = useAddress(at);
  const stock = useRead('/api/stock', stockSchema).value;
  return (
    <>
      <DrumsTitle stock={stock} address={address} />
      <div className="drums-page">
        <Finder address={address} stock={stock} />
        <section className="drums-list" aria-label="List">
          <ShownView address={address} />
        </section>
        <section className="drums-open-at-right" aria-label="Opened">
          <AtTheRight address={address} />
        </section>
      </div>
    </>
  );
};

const DrumsTitle = ({ stock, address }: { readonly stock: Stock | undefined; readonly address: Address }) => {
  const may = useMay();
  const { operatingDate } = useCalendar();
  const noPlace = useNotSetUpYet('places');
  const noBatch = useNotSetUpYet('batches');
  const start = (act: string) => address.go({ act, drum: null, batch: null });
  return (
    <TitleBlock
      title="Drums"
      sub={operatingDate}
      acts={
        <>
          <SlipLinks />
          {may('count', 'enter') && (
            <Button press="c" offBecause={noPlace} onPress={() => start('count')}>
              Count
            </Button>
          )}
          {may('fill', 'enter') && (
            <Button press="f" offBecause={noBatch} onPress={() => start('fill')}>
              Fill drums
            </Button>
          )}
          {may('hold', 'enter') && (
            <Button kind="grave" press="h" offBecause={noBatch} onPress={() => start('hold')}>
              Hold a batch
            </Button>
          )}
        </>
      }
    >
      {stock !== undefined && <StockFields stock={stock} />}
    </TitleBlock>
  );
};

const StockFields = ({ stock: { items } }: { readonly stock: Stock }) => {
  const elsewhere = useList(elsewherePath, drumSchema).value ?? [];
  const aboard = elsewhere.flatMap(({ where }) => (where.kind === 'aboard' ? [where.flight] : []));
  const caches = items.filter(({ cache }) => cache !== null);
  const others = items.filter(({ cache }) => cache === null);
  return (
    <>
      <Field label="Base stores" note={litresAndHeld(others)}>
        {figure(drumsOf(others))} filled
      </Field>
      <Field label="At caches" note={litresAndHeld(caches)}>
        {inWords(drumsOf(caches), 'drums')}, {figure(sum(caches, (row) => row.partUsedDrums))} of them open
      </Field>
      {aboard.length > 0 && (
        <Field label="Aboard" wide note={[...new Set(aboard)].join(', ')}>
          {inWords(aboard.length, 'drums')}
        </Field>
      )}
    </>
  );
};

type StockRows = Stock['items'];

const sum = (rows: StockRows, of: (row: StockRows[number]) => number): number =>
  rows.reduce((total, row) => total + of(row), 0);

const drumsOf = (rows: StockRows): number => sum(rows, (row) => row.sealedDrums + row.partUsedDrums);

const litresAndHeld = (rows: StockRows): string => {
  const held = sum(rows, (row) => row.sealedHeldDrums + row.partUsedHeldDrums);
  return `${inWords(
    sum(rows, (row) => row.bookLitres),
    'L',
  )}${held === 0 ? '' : `, ${held} of them held`}`;
};

const AtTheRight = ({ address }: { readonly address: Address }) => {
  const { act, batch, drum, go } = address;
  const [counted, setCounted] = useState<string>();
  const close = () => go({ act: null, batch: null });
  if (act === 'hold') return <HoldSheet batch={batch} drum={batch === null ? drum : null} go={go} />;
  if (act === 'fill') return <FillForm place={address.word('base')} onClose={close} />;
  if (act === 'count')
    return (
      <CountForm
        onClose={(words) => {
          setCounted(words);
          close();
        }}
      />
    );
  if (act === 'join') return <JoinForm provisional={drum ?? ''} onClose={close} />;
  if (drum !== null) return <DrumCard key={drum} number={drum} go={go} />;
  return (
    <>
      {counted !== undefined && <MessageLine kind="note" what={counted} />}
      <EmptyLine>No drum is open. Type its last digits, or choose one from a list.</EmptyLine>
    </>
  );
};
