import type { ReactNode } from 'react';
import { Link } from 'wouter';
import { keepFact } from './kept.js';
import { Page } from './page.js';
import { Notice, Press } from './parts.js';
import { askToKeep, usePromised } from './storage.js';

/** Where the browser does not promise to keep reports: what to do before leaving; `children`: what can be shown here. */
export const StorageNotSafe = ({ children }: { readonly children: ReactNode }) => {
  const promised = usePromised();
  return (
    <Page
      title={promised === 'yes' ? 'This phone keeps them' : 'This phone may forget'}
      acts={
        <>
          <div className="two">
            <Press onPress={() => void askToKeep()}>Ask again</Press>
            <Press onPress={() => window.print()}>Print it</Press>
          </div>
          <Link className="btn main" href="/" onClick={() => void keepFact('storage read', true)}>
            <span>
              Go on<small>I have it on paper or a second phone</small>
            </span>
          </Link>
        </>
      }
    >
      {promised === 'yes' ? (
        <Notice kind="agree" word="Promised." title="The browser keeps your reports until base has them." />
      ) : (
        <Notice kind="stop" word="Not safe alone." title="The browser will not promise to keep your reports.">
          <p>If space runs short it can clear them without asking.</p>
        </Notice>
      )}
      <p className="said">
        <b>Before you leave,</b> show each flight to a second phone as a code square, or print its sheet. The
        square holds the whole flight and needs no signal.
      </p>
      {children}
      <p className="foot">Installing this page on the phone makes most browsers promise.</p>
    </Page>
  );
};
