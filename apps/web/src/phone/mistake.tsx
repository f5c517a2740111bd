import { Component, type ReactNode } from 'react';

/** A mistake of ours in one page never hides the others, nor what is kept. */
export class Mistake extends Component<{ readonly children: ReactNode }, { readonly why: string | null }> {
  override state = { why: null };

  static getDerivedStateFromError(error: unknown): { readonly why: string } {
    return { why: error instanceof Error ? error.message : String(error) };
  }

  override render(): ReactNode {
    if (this.state.why === null) return this.props.children;
    return (
      <main className="page">
        <header className="head">
          <h1 className="title">This page has a fault</h1>
        </header>
        <p className="said">Your reports are kept. Tell base: {this.state.why}.</p>
        <a className="btn main inset" href="/phone/">
          Open the day
        </a>
      </main>
    );
  }
}
