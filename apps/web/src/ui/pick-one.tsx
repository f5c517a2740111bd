import '@mantine/core/styles/default-css-variables.css';
import '@mantine/core/styles/UnstyledButton.css';
import '@mantine/core/styles/Input.css';
import '@mantine/core/styles/Popover.css';
import '@mantine/core/styles/Combobox.css';
import './pick-one.css';
import { createTheme, MantineProvider, Select } from '@mantine/core';
import { type KeyboardEvent, useEffect, useState } from 'react';
import { meantBy, type Option } from './meant-by.js';

interface PickOneProps {
  readonly label: string;
  readonly value: string | null;
  /** Undefined: they are not read yet. */
  readonly options: readonly Option[] | undefined;
  readonly onChange: (value: string | null) => void;
  /** Esc, when the list is shut. */
  readonly onLeave: () => void;
  readonly placeholder?: string;
  /** Said when nothing is found. */
  readonly nothing?: string;
  readonly fault?: string | undefined;
  readonly autoFocus?: boolean;
}

const theme = createTheme({ defaultRadius: 0, fontFamily: 'inherit', respectReducedMotion: true });

/**
 * One of many, found by typing. Imported by itself (`ui/pick-one.js`), so that pages without it do not load Mantine. Its
 * <style> elements are off, as the pages' Content-Security-Policy refuses them.
 */
export const PickOne = (props: PickOneProps) => {
  const { label, value, options, onChange, placeholder, nothing = 'Nothing found', fault, autoFocus } = props;
  const entered = useEntered(props);
  return (
    <MantineProvider
      theme={theme}
      withCssVariables={false}
      withGlobalClasses={false}
      withStaticClasses={false}
    >
      <Select
        className="pick-one"
        classNames={{ dropdown: 'pick-one-list', description: 'pick-one-said' }}
        label={label}
        value={value}
        data={(options ?? []).map(([each, words]) => ({ value: each, label: words }))}
        onChange={onChange}
        onKeyDown={entered.onKeyDown}
        onSearchChange={entered.clear}
        searchable
        clearable={false}
        withCheckIcon={false}
        nothingFoundMessage={options === undefined ? entered.words || 'Checking...' : nothing}
        description={entered.words}
        descriptionProps={{ role: 'status' }}
        limit={50}
        comboboxProps={{ withinPortal: false, floatingStrategy: 'fixed', transitionProps: { duration: 0 } }}
        withScrollArea={false}
        {...(placeholder === undefined ? {} : { placeholder })}
        {...(fault === undefined ? {} : { error: `Fault: ${fault}` })}
        {...(autoFocus === undefined ? {} : { autoFocus })}
      />
    </MantineProvider>
  );
};

/** Enter without the arrows: what the text means is chosen, as soon as the options are there; where it is not one of them, that is said. */
const useEntered = ({ options, onChange, onLeave, nothing = 'Nothing found' }: PickOneProps) => {
  const [entered, setEntered] = useState('');
  const found = options === undefined || entered === '' ? undefined : meantBy(entered, options);
  const [one] = found?.length === 1 ? found : [];
  // biome-ignore lint/correctness/useExhaustiveDependencies: once for what was entered
  useEffect(() => {
    if (one === undefined) return;
    setEntered('');
    onChange(one[0]);
  }, [one?.[0]]);
  return {
    clear: () => setEntered(''),
    onKeyDown: ({ key, currentTarget }: KeyboardEvent<HTMLInputElement>) => {
      const isOnAnOption = currentTarget.getAttribute('aria-activedescendant') !== null;
      if (key === 'Enter' && !isOnAnOption) setEntered(currentTarget.value.trim());
      if (key === 'Escape' && currentTarget.getAttribute('aria-expanded') !== 'true') onLeave();
    },
    words: entered === '' ? '' : enteredWords(entered, found, nothing),
  };
};

const enteredWords = (entered: string, found: readonly Option[] | undefined, nothing: string): string => {
  if (found === undefined) return `The list is not here yet: ${entered} is chosen when it comes.`;
  if (found.length === 0) return `${nothing}: ${entered}. Nothing is chosen.`;
  return `${found.length} have ${entered} in them: choose one with the arrows.`;
};
