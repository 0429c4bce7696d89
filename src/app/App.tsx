import type { DesignStore } from '../store/designStore.ts';
import type { Keeper } from '../store/keeping/keeper.ts';
import { DesignContext } from '../ui/bench/DesignContext.ts';
import '../ui/tokens.css';
import { ErrorBoundary } from './ErrorBoundary.tsx';
import { Page } from './Page.tsx';

interface Props {
  readonly store: DesignStore;
  /** Comes after the first paint. */
  readonly keeper: Promise<Keeper>;
}

/** The whole page over one design store. */
export function App({ store, keeper }: Props) {
  return (
    <ErrorBoundary store={store}>
      <DesignContext value={store}>
        <Page keeper={keeper} />
      </DesignContext>
    </ErrorBoundary>
  );
}
