import { useCalendar } from '../../api/index.js';
import { Dialog, inWords, Lines } from '../../ui/index.js';
import { drumsAtBaseWords, nothingUsableWords } from './fuel-words.js';
import type { Morning } from './morning-read.js';
import { reserveAt } from './reserve-words.js';

interface FuelDialogProps {
  readonly morning: Pick<Morning, 'fuel' | 'bases'>;
  readonly onClose: () => void;
}

/** For a medevac call: where fuel can be drawn now, the locked reserve told apart. */
export const FuelDialog = ({ morning: { fuel, bases }, onClose }: FuelDialogProps) => {
  const none = fuel.filter(({ usableLitres }) => usableLitres <= 0);
  const { when, day } = useCalendar();
  const counted = (at: string | null) => (at === null ? 'never' : `${day(at)} ${when(at).split(' ').at(-1)}`);
  return (
    <Dialog title="Medevac: fuel now" onClose={onClose}>
      <p className="read">
        Usable now, the most first. The reserve may be drawn for a medevac: no approval is needed, its reason
        goes into the report of the draw. What was planned as drawn by now and not reported may be gone: it is
        still in the figure. Figures are by the book and the last count; ask the place where you can.
      </p>
      <Lines
        caption="Where fuel can be drawn now"
        captionUnseen
        rows={fuel.filter(({ usableLitres }) => usableLitres > 0)}
        keyOf={({ place }) => place}
        columns={[
          { head: 'Place', heads: true, cell: ({ place }) => <b>{place}</b> },
          { head: 'With the reserve', figures: true, cell: ({ usableLitres }) => inWords(usableLitres, 'L') },
          { head: 'Of it reserve', figures: true, cell: reserveAt },
          {
            head: 'Planned, no report',
            figures: true,
            cell: ({ notReportedLitres }) => (notReportedLitres > 0 ? inWords(notReportedLitres, 'L') : ''),
          },
          { head: 'Last count', cell: ({ countedAt }) => counted(countedAt) },
          { head: 'Confidence', cell: ({ confidence }) => confidence },
        ]}
      />
      {none.length > 0 && <p>Nothing usable: {none.map(nothingUsableWords).join('; ')}.</p>}
      {bases.length > 0 && (
        <Lines
          caption="At the bases"
          rows={bases}
          keyOf={({ place }) => place}
          columns={[
            { head: 'Base', heads: true, cell: ({ place }) => <b>{place}</b> },
            {
              head: 'In filled drums',
              figures: true,
              cell: ({ usableLitres }) => inWords(usableLitres, 'L'),
            },
            { head: 'Drums', cell: drumsAtBaseWords },
            {
              head: 'In bulk, as last kept',
              figures: true,
              cell: ({ bulkLitres }) => inWords(bulkLitres, 'L'),
            },
          ]}
        />
      )}
    </Dialog>
  );
};
