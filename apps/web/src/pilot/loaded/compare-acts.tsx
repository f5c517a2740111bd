import { Main, Press } from '../../phone/index.js';

interface CompareActsProps {
  readonly agrees: boolean;
  /** It does not hold, or more is aboard than a surface takes: it can only be told. */
  readonly onlyToTell: boolean;
  /** "F06, version 3". */
  readonly loaded: string;
  readonly onAdding: () => void;
  readonly onAgain: () => void;
  readonly onPositions: () => void;
  readonly onSigning: () => void;
  readonly onKeep: () => void;
}

/** Whatever the two totals say, they can be looked at and typed again before Loaded. */
export const CompareActs = (props: CompareActsProps) => {
  const { agrees, onlyToTell, loaded, onAdding, onAgain, onPositions, onSigning, onKeep } = props;
  const adding = <Press onPress={onAdding}>How they add</Press>;
  const again = <Press onPress={onAgain}>Type again</Press>;
  if (onlyToTell)
    return (
      <>
        <div className="two">
          {agrees ? again : adding}
          <Press onPress={onPositions}>Back to positions</Press>
        </div>
        {agrees ? (
          <Press onPress={onKeep}>It is loaded so: tell base</Press>
        ) : (
          <Press onPress={onSigning}>It is loaded so: sign, tell base</Press>
        )}
      </>
    );
  return agrees ? (
    <>
      <div className="two">
        {adding}
        {again}
      </div>
      <Main small={loaded} onPress={onKeep}>
        Loaded
      </Main>
    </>
  ) : (
    <>
      <div className="two">
        {adding}
        <Press onPress={onSigning}>Sign for it</Press>
      </div>
      <Main onPress={onAgain}>Type again</Main>
    </>
  );
};
