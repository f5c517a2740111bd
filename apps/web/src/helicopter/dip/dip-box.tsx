import type { DipTable } from '@drumline/stock';
import { Choices } from '../../phone/index.js';
import { FigureBox } from '../figure-box.js';
import { dipWords } from './dips.js';

interface DipBoxProps {
  readonly label: string;
  readonly table: DipTable;
  readonly value: string;
  readonly now: boolean;
  readonly onPress: () => void;
}

/** Wetted centimetres of the stick, with the litres at once. */
export const DipBox = ({ label, table, ...box }: DipBoxProps) => (
  <>
    <FigureBox label={label} unit="cm" {...box} />
    <p className="small soft" role="status">
      {dipWords(table, box.value)}
    </p>
  </>
);

interface HowDippedProps {
  readonly legend?: string;
  /** The word for no stick at all. */
  readonly none?: string;
  readonly tables: readonly DipTable[];
  /** Null: litres are written. */
  readonly chosen: DipTable | null;
  readonly onChoose: (name: string | null) => void;
}

const inLitres = '';

/** Litres as somebody else has worked them out, or the stick in a drum as it stands or lies. */
export const HowDipped = ({
  legend = 'Open drums, written in',
  none = 'Litres',
  tables,
  chosen,
  onChoose,
}: HowDippedProps) =>
  tables.length === 0 ? null : (
    <Choices
      legend={legend}
      of={[
        { value: inLitres, word: none },
        ...tables.map(({ name }) => ({ value: name, word: `cm, ${name}` })),
      ]}
      chosen={chosen?.name ?? inLitres}
      onChoose={(name) => onChoose(name === inLitres ? null : name)}
    />
  );
