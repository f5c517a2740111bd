import { type Litres, print } from '@drumline/units';
import { useState } from 'react';
import { Choices, Notice, Press } from '../../phone/index.js';
import { programmeOfTheDay } from '../cache-view.js';
import type { DrawStep } from './draw-page.js';

/** Whose fuel it is: the day's programme unless somebody says otherwise; or a medevac. */
export const ForWhat = ({ here, place, draft, setDraft }: DrawStep) => {
  const [isChanging, setIsChanging] = useState(false);
  const { programmes } = here.places;
  const ofTheDay = programmeOfTheDay(here, place);
  const code = draft.programme ?? ofTheDay;
  const chosen = programmes.find((each) => each.code === code);
  if (isChanging || chosen === undefined)
    return (
      <Choices
        legend="For"
        of={programmes.map(({ code: value, name }) => ({ value, word: value, small: name }))}
        chosen={code}
        onChoose={(programme) => {
          setDraft({ ...draft, programme });
          setIsChanging(false);
        }}
      />
    );
  const ownProgramme = programmes.find(({ isRecharged }) => !isRecharged)?.code ?? draft.programme;
  return (
    <div className="for-what">
      <div>
        <b>
          {chosen.code} {chosen.name}
        </b>
        <span className="small soft says">
          {draft.programme === null
            ? 'from today’s task'
            : draft.medevac === null
              ? 'chosen by you'
              : 'medevac'}
        </span>
      </div>
      <Press onPress={() => setIsChanging(true)}>Change</Press>
      <Press
        on={draft.medevac !== null}
        onPress={() =>
          setDraft(
            draft.medevac === null
              ? { ...draft, medevac: '', programme: ownProgramme, isDrawnAllTheSame: false }
              : { ...draft, medevac: null, programme: null },
          )
        }
      >
        Medevac
      </Press>
      {draft.medevac !== null && (
        <label className="field">
          Who or what, and where
          <input
            value={draft.medevac}
            maxLength={200}
            onChange={({ target }) => setDraft({ ...draft, medevac: target.value })}
          />
        </label>
      )}
    </div>
  );
};

/** The bottom slice is for a medevac. What has been drawn from it can be kept all the same. */
export const IntoReserve = ({ draft, setDraft, litres }: DrawStep & { readonly litres: Litres }) => (
  <Notice kind="stop" word="Reserve." title={`${print(litres, 'L')} of it are the medevac reserve.`}>
    <p>Routine draws stop above it. Press Medevac below, or say that it was drawn all the same.</p>
    <Press
      on={draft.isDrawnAllTheSame}
      onPress={() => setDraft({ ...draft, isDrawnAllTheSame: !draft.isDrawnAllTheSame })}
    >
      Drawn all the same
    </Press>
  </Notice>
);
