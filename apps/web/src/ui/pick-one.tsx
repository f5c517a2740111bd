import '@mantine/core/styles/default-css-variables.css';
import '@mantine/core/styles/UnstyledButton.css';
import '@mantine/core/styles/Input.css';
import '@mantine/core/styles/Popover.css';
import '@mantine/core/styles/Combobox.css';
import './pick-one.css';
import { createTheme, MantineProvider, Select } from '@mantine/core';

interface PickOneProps {
  readonly label: string;
  readonly value: string | null;
  /** What is kept, and the words by which it is found and shown. */
  readonly options: readonly (readonly [value: string, words: string])[];
  readonly onChange: (value: string | null) => void;
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
  return (
    <MantineProvider
      theme={theme}
      withCssVariables={false}
      withGlobalClasses={false}
      withStaticClasses={false}
    >
      <Select
        className="pick-one"
        classNames={{ dropdown: 'pick-one-list' }}
        label={label}
        value={value}
        data={options.map(([each, words]) => ({ value: each, label: words }))}
        onChange={onChange}
        searchable
        clearable={false}
        withCheckIcon={false}
        nothingFoundMessage={nothing}
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
