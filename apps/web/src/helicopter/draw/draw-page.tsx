import { Page, useDraft, useKeeping } from '../../phone/index.js';
import { cacheView } from '../cache-view.js';
import type { AtPlace } from '../use-places.js';
import { DrawChecks } from './draw-checks.js';
import { type DrawDraft, draftFor, rowsOf } from './draw-draft.js';
import { DrawLitres } from './draw-litres.js';
import { DrawReject } from './draw-reject.js';

/** What each step of a draw works on. */
export interface DrawStep extends AtPlace {
  readonly draft: DrawDraft;
  /** Null: forgotten. */
  readonly setDraft: (draft: DrawDraft | null) => void;
  readonly keeping: ReturnType<typeof useKeeping>;
}

/** Look at a drum, then pump: drum by drum, then litres for all of them. */
export const DrawPage = ({ drum: number, ...at }: AtPlace & { readonly drum: string }) => {
  const { here, place, person } = at;
  const view = cacheView(here, place);
  const [first] = rowsOf(view, [number]);
  // Of this day only: what was looked at yesterday is looked at again.
  const [draft, setDraft] = useDraft<DrawDraft>(
    `draw ${place} ${number} ${here.today}`,
    draftFor(first, number),
  );
  const keeping = useKeeping(person);
  const step = { ...at, draft, setDraft, keeping };
  const [checking] = draft.checking === null ? [] : rowsOf(view, [draft.checking]);
  if (checking !== undefined)
    return draft.isRejecting ? (
      <DrawReject {...step} row={checking} />
    ) : (
      <DrawChecks key={checking.drum.number} {...step} row={checking} view={view} />
    );
  const rows = rowsOf(view, draft.drums);
  if (rows.length === 0) return <Page title={`No drum ${number} with fuel at ${place}`} />;
  return <DrawLitres {...step} rows={rows} view={view} />;
};
