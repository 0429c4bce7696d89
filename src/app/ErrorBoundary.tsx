import { Component, type ErrorInfo, type ReactNode } from 'react';
import type { DesignStore } from '../store/designStore.ts';
import { Button } from '../ui/kit/Button.tsx';
import styles from './ErrorBoundary.module.css';
import { saveDesign } from './files.ts';

interface Props {
  readonly store: DesignStore;
  readonly children: ReactNode;
}

interface State {
  readonly message: string | null;
}

/** If the page breaks, the design does not go with it. Only a class can be this. */
export class ErrorBoundary extends Component<Props, State> {
  override state: State = { message: null };

  static getDerivedStateFromError(error: unknown): State {
    return { message: error instanceof Error ? error.message : String(error) };
  }

  override componentDidCatch(error: unknown, { componentStack }: ErrorInfo) {
    console.error(error, componentStack);
  }

  override render() {
    const { message } = this.state;
    if (message === null) return this.props.children;
    const { store } = this.props;
    return (
      <main className={styles.fault}>
        <h1>The page has broken; your design has not</h1>
        <p>
          This is a fault of Throughfin, not of what you typed. Save the design, then go on: it comes back as
          it was.
        </p>
        <p className={styles.message}>{message}</p>
        <div className={styles.choices}>
          <Button onClick={() => saveDesign(store.getState().solvedDesign)}>Save the design</Button>
          <Button onClick={() => this.setState({ message: null })}>Go on</Button>
        </div>
      </main>
    );
  }
}
