import { isOfTheOperator, type Me } from '../api/index.js';
import { type Page, seesOwnFlightsOnly } from '../pages.js';
import { MessageLine, TitleBlock } from '../ui/index.js';
import { PageLinks } from './no-such-page.js';

/** The address of a page that is not the person's to see: why, and what is. */
export const NotOpen = ({ page, me }: { readonly page: Page; readonly me: Me }) => (
  <>
    <TitleBlock title={page.name} />
    <div className="work">
      <MessageLine kind="note" what={`${page.name} is not open to ${me.roles.join(', ')}`} {...wordsFor(me)}>
        <PageLinks />
      </MessageLine>
    </div>
  </>
);

const wordsFor = (me: Me): { readonly why: string; readonly next: string } => {
  if (!isOfTheOperator(me))
    return { why: 'You see your own programme: its tasks and its litres.', next: 'It stands on:' };
  if (seesOwnFlightsOnly(me))
    return {
      why: 'It shows every flight; you see your own.',
      next: 'They stand on Load, and on the phone page. Open to you here:',
    };
  return { why: 'It shows what your role does not see.', next: 'Open to you:' };
};
