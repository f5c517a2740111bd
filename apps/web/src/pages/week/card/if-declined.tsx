import { type Level, LevelMark } from '../../../ui/index.js';

const levelOf: Readonly<Record<string, Level>> = {
  'run out': 'critical',
  'below critical': 'critical',
  'below minimum': 'below',
};

export const IfDeclined = ({
  words,
  level,
}: {
  readonly words: string;
  readonly level: string | undefined;
}) => {
  const mark = level === undefined ? undefined : levelOf[level];
  return (
    <p>
      {mark !== undefined && (
        <>
          <LevelMark level={mark} words={`${level!.charAt(0).toUpperCase()}${level!.slice(1)}.`} />{' '}
        </>
      )}
      {words}
    </p>
  );
};
