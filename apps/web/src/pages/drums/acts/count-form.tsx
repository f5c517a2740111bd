import { useState } from 'react';
import { useList, useRead } from '../../../api/index.js';
import { Choice, Entry, inWords } from '../../../ui/index.js';
import { placeSchema, stockSchema } from '../drums-read.js';
import { EntryForm } from './entry-form.js';
import { countIn, figureIn, millilitresIn } from './figures.js';

/** Somebody looked at a whole place. The book is shown only after the figures are typed: a count is not copied. */
export const CountForm = ({ onClose }: { readonly onClose: () => void }) => {
  const places = useList('/api/places', placeSchema).value ?? [];
  const stock = useRead('/api/stock', stockSchema).value;
  const [place, setPlace] = useState('');
  const [method, setMethod] = useState<'dip' | 'drums seen'>('drums seen');
  const [seenFrom, setSeenFrom] = useState<'ground' | 'air'>('ground');
  const [figures, setFigures] = useState({ litres: '', sealed: '', open: '', empty: '' });
  const set = (changed: Partial<typeof figures>) => setFigures({ ...figures, ...changed });
  const litres = figureIn(figures.litres);
  const [sealedDrums, openDrums, emptyDrums] = [figures.sealed, figures.open, figures.empty].map(countIn);
  const isWhole =
    litres !== null && litres >= 0 && [sealedDrums, openDrums, emptyDrums].every((each) => each !== null);
  const book = stock?.items.find((each) => each.place === place);
  const entry =
    place === '' || !isWhole
      ? 'Place, litres and all three numbers of drums are needed; none is written 0.'
      : {
          kind: 'counted',
          place,
          method,
          seenFrom,
          millilitres: millilitresIn(litres),
          sealedDrums,
          openDrums,
          emptyDrums,
        };
  return (
    <EntryForm title="Count a place" press="Enter the count" entry={entry} fromElsewhere onClose={onClose}>
      <div className="drums-row">
        <Choice
          label="Place"
          value={place}
          options={[
            ['', 'Choose...'],
            ...places.map(({ data }) => [data.code, `${data.code} ${data.name}`] as const),
          ]}
          onChange={setPlace}
        />
        <Choice
          label="How"
          value={method}
          options={[
            ['drums seen', 'drums seen'],
            ['dip', 'dip'],
          ]}
          onChange={setMethod}
        />
        <Choice
          label="Seen from"
          value={seenFrom}
          options={[
            ['ground', 'the ground'],
            ['air', 'the air'],
          ]}
          onChange={setSeenFrom}
        />
      </div>
      <div className="drums-row">
        <Entry label="Fuel" unit="L" value={figures.litres} onChange={(litres) => set({ litres })} />
        <Entry label="Sealed" unit="drums" value={figures.sealed} onChange={(sealed) => set({ sealed })} />
        <Entry label="Open" unit="drums" value={figures.open} onChange={(open) => set({ open })} />
        <Entry label="Empty" unit="drums" value={figures.empty} onChange={(empty) => set({ empty })} />
      </div>
      {isWhole && book !== undefined && (
        <p role="status">
          The book has {inWords(book.bookLitres, 'L')}, {book.sealedDrums} sealed, {book.partUsedDrums} open,{' '}
          {book.emptyDrums} empty. A difference beyond the tolerance opens a difference case; the count stands
          as you write it.
        </p>
      )}
    </EntryForm>
  );
};
