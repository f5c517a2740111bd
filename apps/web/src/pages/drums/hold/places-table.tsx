import { useRead } from '../../../api/index.js';
import { figure, inWords, LevelMark, Lines } from '../../../ui/index.js';
import { type HoldEffect, stockSchema } from '../drums-read.js';
import { levelWords, worstFirst } from './hold-words.js';

interface PlacesTableProps {
  readonly effect: HoldEffect;
  readonly isHeld: boolean;
}

/** Place by place: drums, book, usable now and then, and the level that results. */
export const PlacesTable = ({ effect, isHeld }: PlacesTableProps) => {
  const stock = useRead('/api/stock', stockSchema).value;
  const at = (place: string) => stock?.items.find((each) => each.place === place);
  const now = {
    head: 'Usable now',
    cell: (row: HoldEffect['places'][number]) => litres(row.usableLitresBefore),
    figures: true,
  };
  return (
    <>
      <Lines
        caption="Usable by place with the hold"
        captionUnseen
        rows={worstFirst(effect.places)}
        keyOf={({ place }) => place}
        columns={[
          { head: 'Place', cell: ({ place }) => place, heads: true },
          { head: 'Drums', cell: ({ drums }) => inWords(drums, 'drums'), figures: true },
          { head: 'Book', cell: ({ place }) => litres(at(place)?.bookLitres), figures: true, wide: true },
          ...(isHeld ? [] : [now]),
          {
            head: isHeld ? 'Usable' : 'Usable then',
            cell: (row) => <b>{litres(row.usableLitresAfter)}</b>,
            figures: true,
          },
          { head: 'Minimum', cell: ({ place }) => litres(at(place)?.cache?.minimumLitres), figures: true },
          {
            head: isHeld ? 'Level' : 'Then',
            cell: (row) => {
              const level = levelWords(row, at(row.place)?.cache?.minimumLitres);
              return level === null ? 'base, no minimum' : <LevelMark {...level} />;
            },
          },
        ]}
        sum={['All', inWords(effect.drums, 'drums'), '', ...(isHeld ? [] : ['']), '', '', '']}
      />
      <small>Usable is shown before the medevac reserve is set aside.</small>
    </>
  );
};

const litres = (amount: number | undefined): string => (amount === undefined ? '' : `${figure(amount)} L`);
