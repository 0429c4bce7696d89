import type { ReactNode } from 'react';
import type { DesignStore } from '../store/designStore.ts';
import { Boundary } from '../ui/kit/Boundary.tsx';
import { Button } from '../ui/kit/Button.tsx';
import styles from './ErrorBoundary.module.css';
import { saveDesign } from './files.ts';

interface Props {
  readonly store: DesignStore;
  readonly children: ReactNode;
}

/** If the page breaks, the design does not go with it. */
export function ErrorBoundary({ store, children }: Props) {
  return (
    <Boundary
      instead={(message, again) => (
        <main className={styles.fault}>
          <h1>The page has broken; your design has not</h1>
          <Fault store={store} message={message} again={again} />
        </main>
      )}
    >
      {children}
    </Boundary>
  );
}

interface ViewProps extends Props {
  /** What the view is, within a sentence: "the drawing". */
  readonly name: string;
  /** The view is tried again as soon as this is another. */
  readonly of: unknown;
}

/** A view that breaks leaves the others, and comes back with the next answer. */
export function ViewBoundary({ store, name, of, children }: ViewProps) {
  return (
    <Boundary
      of={of}
      instead={(message, again) => (
        <section className={styles.view} role="alert">
          <h2>Here {name} has broken; your design has not</h2>
          <Fault store={store} message={message} again={again} />
        </section>
      )}
    >
      {children}
    </Boundary>
  );
}

interface FaultProps {
  readonly store: DesignStore;
  readonly message: string;
  readonly again: () => void;
}

function Fault({ store, message, again }: FaultProps) {
  return (
    <>
      <p>
        This is a fault of Throughfin, not of what you typed. Save the design, then go on: it comes back as it
        was.
      </p>
      <p className={styles.message}>{message}</p>
      <div className={styles.choices}>
        <Button onClick={() => saveDesign(store.getState().solvedDesign)}>Save the design</Button>
        <Button onClick={again}>Go on</Button>
      </div>
    </>
  );
}
