import { Component, type ReactNode } from 'react';
import { Page } from './Page.tsx';
import { useSpeaker } from './words.tsx';

interface State {
  readonly failed: string | null;
}

/** Catches what a page could not do and says so plainly; the daybook and unfinished work lie safe beneath. */
export class Failure extends Component<{ readonly children: ReactNode }, State> {
  override state: State = { failed: null };

  static getDerivedStateFromError(error: unknown): State {
    return { failed: error instanceof Error ? error.message : String(error) };
  }

  override render(): ReactNode {
    return this.state.failed === null ? this.props.children : <Failed why={this.state.failed} />;
  }
}

function Failed({ why }: { readonly why: string }): ReactNode {
  const speaker = useSpeaker();
  return (
    <Page
      question={speaker.say('app.failed.question')}
      act={{ text: speaker.say('app.failed.again'), onAct: () => location.reload() }}
    >
      <p className="answer">{speaker.say('app.failed.answer')}</p>
      <p className="section small quiet">{speaker.say('app.failed.why', { why })}</p>
    </Page>
  );
}
