import { StrictMode } from 'react';
import { createRoot } from 'react-dom/client';
import { createDesignStore } from '../store/designStore.ts';
import { mayHaveKept } from '../store/keeping/hint.ts';
import { App } from './App.tsx';

/** The bench waits so long for the design of the last visit; later it comes only if nothing was typed meanwhile. */
const patience_ms = 400;

/** Puts the page into `place`, with the design of the last visit where there is one. */
export async function start(place: HTMLElement): Promise<void> {
  const store = createDesignStore();
  const keeper = import('../store/keeping/browserKeeper.ts').then((keeping) => keeping.browserKeeper(store));
  const restored = keeper.then(({ restore }) => restore());
  // Nobody who comes for the first time waits for a store that has nothing.
  if (mayHaveKept()) await Promise.race([restored, new Promise((done) => setTimeout(done, patience_ms))]);
  createRoot(place).render(
    <StrictMode>
      <App store={store} keeper={keeper} />
    </StrictMode>,
  );
}
