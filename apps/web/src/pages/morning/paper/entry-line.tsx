import { type FormEvent, type Ref, useEffect, useImperativeHandle, useRef, useState } from 'react';
import { newId, useCalendar, useMe } from '../../../api/index.js';
import { keepLine, useLines } from '../../../paper/kept-lines.js';
import { sendLines } from '../../../paper/send-lines.js';
import { Button, Entry } from '../../../ui/index.js';
import { keptLine, sameLine } from './keep.js';
import { readLine } from './read-line.js';
import type { LineEntry, ReadLine, Sheet } from './sheet.js';
import { useOwnSheet } from './use-own-sheet.js';

export interface LineField {
  /** Puts a line, or the beginning of one, into the field. */
  readonly begin: (text: string) => void;
}

interface EntryLineProps {
  readonly sheet: Sheet;
  readonly field: Ref<LineField>;
}

/** One line, what it says, Enter. Several lines pasted at once are kept one by one, up to the first that cannot be read. */
export const EntryLine = ({ sheet, field }: EntryLineProps) => {
  const [text, setText] = useState('');
  const [notKept, setNotKept] = useState('');
  const form = useRef<HTMLFormElement>(null);
  const lines = useLines();
  const me = useMe();
  const line = readLine(text, sheet);
  const ownSheet = useOwnSheet(line, sheet);
  const read = line?.kind === 'entry' ? { ...line, doubts: [...ownSheet, ...line.doubts] } : line;
  const begin = (next: string) => {
    setText(next);
    form.current?.querySelector('input')?.focus();
  };
  useImperativeHandle(field, () => ({ begin }));
  useEffect(() => form.current?.querySelector('input')?.focus(), []);
  const keep = (typed: string, entry: LineEntry): boolean => {
    const line = keptLine(entry, {
      ...{ text: typed.trim(), newId },
      ...{ enteredAt: sheet.now, enteredBy: me.fullName },
    });
    if (keepLine(line)) return true;
    setNotKept('This machine could not keep the line: leave it on the paper, and free some space.');
    return false;
  };
  const onSubmit = (event: FormEvent) => {
    event.preventDefault();
    if (read?.kind !== 'entry' || !keep(text, read)) return;
    begin('');
    void sendLines();
  };
  const onPaste = (pasted: string): boolean => {
    const several = pasted.split(/\r?\n/).filter((each) => each.trim() !== '');
    if (several.length < 2) return false;
    const bad = several.findIndex((each) => {
      const line = readLine(each, sheet);
      return line?.kind !== 'entry' || !keep(each, line);
    });
    begin(bad < 0 ? '' : several[bad]!);
    void sendLines();
    return true;
  };
  return (
    <form ref={form} className="paper-line" onSubmit={onSubmit}>
      <Entry
        label="One line of the sheet, or a delivery as it came in a message"
        value={text}
        onChange={setText}
        fault={notKept === '' ? undefined : notKept}
        note="Who or where, then what, then when: F06 left GAN 0573 0574 at 0805. Enter keeps it; more forms stand beside."
        input={{
          autoComplete: 'off',
          spellCheck: false,
          maxLength: 400,
          onPaste: (event) => {
            if (onPaste(event.clipboardData.getData('text'))) event.preventDefault();
          },
        }}
      />
      <Button type="submit" kind="main" offBecause={whyNot(read)}>
        Keep the line
      </Button>
      <Understood read={read} same={read?.kind === 'entry' ? sameLine(read, lines)?.text : undefined} />
    </form>
  );
};

const whyNot = (read: ReadLine | null): string | undefined => {
  if (read === null) return 'Nothing is written yet.';
  return read.kind === 'fault' ? 'See below.' : undefined;
};

const Understood = ({
  read,
  same,
}: {
  readonly read: ReadLine | null;
  readonly same: string | undefined;
}) => {
  const { when } = useCalendar();
  return (
    <div className="understood" role="status">
      {read?.kind === 'fault' && <p className="plum">{read.words}</p>}
      {read?.kind === 'entry' && (
        <>
          <p>
            <b>{read.words}</b>
          </p>
          <p>
            {when(read.happenedAt)}, {read.means === 'paper' ? 'written' : 'said'} {when(read.writtenAt)} by{' '}
            {read.by}, {read.means === 'paper' ? 'from paper' : 'by radio'}.
          </p>
          {same !== undefined && <p className="ochre">The same stands on this sheet already: {same}.</p>}
          {read.doubts.map((doubt) => (
            <p key={doubt} className="ochre">
              {doubt}
            </p>
          ))}
          {read.doubts.length > 0 && <p>Enter keeps it as it is written.</p>}
        </>
      )}
    </div>
  );
};
