import type { DipTable } from '@drumline/stock';
import { Choice, Entry } from '../ui/index.js';
import { readDips } from './dips.js';

export interface DipTyped {
  readonly table: string;
  readonly cm: string;
}

interface DipEntryProps {
  readonly label: string;
  readonly tables: readonly DipTable[];
  readonly value: DipTyped;
  readonly onChange: (value: DipTyped) => void;
}

/** By its name, else the usual one. */
export const dipTableOf = ({ table }: DipTyped, tables: readonly DipTable[]): DipTable | undefined =>
  tables.find(({ name }) => name === table) ?? tables[0];

/** Centimetres of wetted stick, drum after drum, with the litres at once. */
export const DipEntry = ({ label, tables, value, onChange }: DipEntryProps) => {
  const table = dipTableOf(value, tables);
  if (table === undefined) return null;
  const read = readDips(value.cm, table);
  return (
    <div className="two">
      <Choice
        label="Drum, for the stick"
        value={table.name}
        options={tables.map(({ name }) => [name, name] as const)}
        onChange={(name) => onChange({ ...value, table: name })}
      />
      <Entry
        label={label}
        unit="cm"
        value={value.cm}
        onChange={(cm) => onChange({ ...value, cm })}
        fault={read.drums > 0 && read.litres === undefined ? read.words : undefined}
        doubt={read.litres === undefined ? undefined : read.words}
      />
    </div>
  );
};
