import { createDesignStore } from '../store/designStore.ts';
import { DesignContext } from '../ui/bench/DesignContext.ts';
import '../ui/tokens.css';
import { ErrorBoundary } from './ErrorBoundary.tsx';
import { Page } from './Page.tsx';

const onTheBench = createDesignStore();

/** The whole page over one design store. */
export function App({ store = onTheBench }) {
  return (
    <ErrorBoundary store={store}>
      <DesignContext value={store}>
        <Page />
      </DesignContext>
    </ErrorBoundary>
  );
}
