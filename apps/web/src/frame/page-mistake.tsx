import { Component, type ReactNode } from 'react';
import { Button, MessageLine } from '../ui/index.js';

interface State {
  readonly mistake: Error | undefined;
}

/** A page that breaks is said, not left blank; the frame stays usable. */
export class PageMistake extends Component<{ readonly children: ReactNode }, State> {
  override state: State = { mistake: undefined };

  static getDerivedStateFromError(mistake: Error): State {
    return { mistake };
  }

  override render(): ReactNode {
    const { mistake } = this.state;
    if (mistake === undefined) return this.props.children;
    return (
      <div className="work">
        <MessageLine
          what="This page made a mistake and cannot be shown"
          why={mistake.message}
          next="Nothing you sent before is lost. Load it again; tell set-up."
        />
        <Button onPress={() => window.location.reload()}>Load again</Button>
      </div>
    );
  }
}
