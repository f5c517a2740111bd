import {
  type GoodsDrum,
  goodsOnLeg,
  type ParticularsSet,
  particulars,
  type TieDownSetting,
  tieDown,
} from '@drumline/loading';
import { kilograms, litres, poundsFromKilograms } from '@drumline/units';
import { useRead } from '../../../api/index.js';
import { figure, Lines } from '../../../ui/index.js';
import { faultsOfOne, type Section } from '../sections.js';
import { policyDrumSchema } from './policy-drum.js';

interface PreviewProps {
  readonly section: Section;
  readonly data: unknown;
}

/** Straps for one drum of planning weight, as the load sheet will count them. */
export const TieDownPreview = ({ section, data }: PreviewProps) => {
  const drum = useRead('/api/policy/current', policyDrumSchema).value?.data.drum;
  // Not filled in yet: what is wrong is said when it is saved.
  if (drum === undefined || faultsOfOne(section, data).length > 0) return null;
  const { factors, kit } = data as TieDownSetting;
  const counted = tieDown(poundsFromKilograms(kilograms(drum.grossKg)), factors, kit);
  return (
    <div role="status" className="set-up-preview">
      <Lines
        caption={`A drum of ${drum.grossKg} kg`}
        rows={counted.needs}
        keyOf={({ direction }) => direction}
        columns={[
          { head: 'Direction', heads: true, cell: ({ direction }) => direction },
          {
            head: 'Holds, lb',
            figures: true,
            cell: ({ neededLb }) => figure(neededLb),
          },
          { head: 'Straps', figures: true, cell: ({ straps }) => straps ?? 'none hold it' },
        ]}
      />
      <p>{counted.words}</p>
      <p>
        <b>{counted.caution}</b>
      </p>
    </div>
  );
};

/** The fields as they stand on the sheet of two drums. */
export const ParticularsPreview = ({ section, data }: PreviewProps) => {
  if (faultsOfOne(section, data).length > 0) return null;
  const fields = particulars(
    data as ParticularsSet,
    goodsOnLeg([drum('0001', 'R1L'), drum('0002', 'R1R')], 0),
    {
      passengers: 0,
      date: '2031-01-01',
      approval: null,
    },
  );
  return (
    <div role="status" className="set-up-preview">
      <Lines
        caption="On the sheet of two drums"
        rows={fields}
        keyOf={({ label }) => label}
        columns={[
          { head: 'Wording', heads: true, cell: ({ label }) => label },
          { head: 'What stands there', cell: ({ value }) => value ?? 'a line to write on' },
        ]}
      />
    </div>
  );
};

const drum = (number: string, position: string): GoodsDrum => ({
  number,
  position,
  content: 'fuel',
  litres: litres(200),
  fromLeg: 0,
  lastLeg: 0,
  unloadAt: 'XXXX',
});
