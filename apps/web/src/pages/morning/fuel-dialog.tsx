import { useCalendar } from '../../api/index.js';
import { Dialog, figure, inWords, Lines } from '../../ui/index.js';
import type { Morning } from './morning-read.js';

/** For a medevac call: where fuel can be drawn now, the locked reserve told apart. */
export const FuelDialog = ({
  fuel,
  onClose,
}: {
  readonly fuel: Morning['fuel'];
  readonly onClose: () => void;
}) => {
  const { when, day } = useCalendar();
  const counted = (at: string | null) => (at === null ? 'never' : `${day(at)} ${when(at).split(' ').at(-1)}`);
  return (
    <Dialog title="Medevac: fuel now" onClose={onClose}>
      <p className="read">
        Usable now, the most first. The reserve may be drawn for a medevac: no approval is needed, its reason
        goes into the report of the draw. Figures are by the book and the last count; ask the place where you
        can.
      </p>
      <Lines
        caption="Where fuel can be drawn now"
        captionUnseen
        rows={fuel.filter(({ usableLitres }) => usableLitres > 0)}
        keyOf={({ place }) => place}
        columns={[
          { head: 'Place', heads: true, cell: ({ place }) => <b>{place}</b> },
          { head: 'With the reserve', figures: true, cell: ({ usableLitres }) => inWords(usableLitres, 'L') },
          { head: 'Of it reserve', figures: true, cell: ({ reserveLitres }) => inWords(reserveLitres, 'L') },
          { head: 'Last count', cell: ({ countedAt }) => counted(countedAt) },
          { head: 'Confidence', cell: ({ confidence }) => confidence },
        ]}
      />
      <p>
        {figure(fuel.filter(({ usableLitres }) => usableLitres <= 0).length)} places have none:{' '}
        {fuel
          .filter(({ usableLitres }) => usableLitres <= 0)
          .map(({ place }) => place)
          .join(', ') || 'no place'}
        .
      </p>
    </Dialog>
  );
};
