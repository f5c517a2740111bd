import { Button, Choice, Entry, inWords } from '../../ui/index.js';
import type { Choices } from './cache-list.js';

interface CachesToolsProps {
  readonly choices: Choices;
  readonly shown: number;
  readonly all: number;
  readonly onChange: (changed: Partial<Record<keyof Choices, string>>) => void;
}

/** Find, sort and filter, in one line. */
export const CachesTools = ({ choices, shown, all, onChange }: CachesToolsProps) => (
  <search className="caches-tools" aria-label="Which caches, in which order">
    <Entry
      label="Find"
      value={choices.text}
      onChange={(text) => onChange({ text })}
      input={{ type: 'search', size: 12, placeholder: 'code or name' }}
    />
    <Choice
      label="Order"
      value={choices.sort}
      options={[
        ['first', 'first below critical'],
        ['cover', 'days of cover'],
        ['room', 'room above minimum'],
        ['count', 'age of count'],
        ['name', 'code'],
      ]}
      onChange={(sort) => onChange({ sort })}
    />
    <Choice
      label="Only"
      value={choices.only}
      options={[
        ['all', 'any level'],
        ['below', 'below minimum ahead'],
        ['old', 'count over 7 days old'],
      ]}
      onChange={(only) => onChange({ only })}
    />
    <Choice
      label="Kind"
      value={choices.kind}
      options={[
        ['all', 'all'],
        ['strip', 'strips'],
        ['pad', 'pads'],
        ['base', 'bases'],
      ]}
      onChange={(kind) => onChange({ kind })}
    />
    <span className="found" role="status">
      {shown === all ? inWords(all, 'caches') : `${shown} of ${inWords(all, 'caches')}`}
    </span>
    {shown < all && (
      <Button small onPress={() => onChange({ text: '', only: 'all', kind: 'all' })}>
        Show all
      </Button>
    )}
  </search>
);
