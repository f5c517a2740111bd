import type { ReactNode } from 'react';
import { Link } from 'wouter';
import { Page } from './page.js';
import { Main, Notice } from './parts.js';
import { goRound } from './round.js';
import { usePromised } from './storage.js';

interface DayPageProps {
  readonly title: string;
  /** Whose day it is. */
  readonly below: string;
  readonly children: ReactNode;
}

/** A crew's first page: what is to be done, what was reported, and whether the browser keeps both. */
export const DayPage = ({ title, below, children }: DayPageProps) => (
  <Page
    title={title}
    below={below}
    acts={
      <>
        <Link className="btn" href="/sent">
          What I reported
        </Link>
        <Main onPress={() => void goRound()}>Check now</Main>
      </>
    }
  >
    {usePromised() === 'no' && (
      <Notice kind="check" word="Not safe alone." title="This browser may clear what it keeps.">
        <Link href="/storage">What to do before you leave</Link>
      </Notice>
    )}
    {children}
  </Page>
);
