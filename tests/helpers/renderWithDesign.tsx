import { render } from '@testing-library/react';
import type { ReactElement } from 'react';
import type { Design } from '../../src/model/design.ts';
import { exampleById } from '../../src/model/examples/examples.ts';
import { createDesignStore } from '../../src/store/designStore.ts';
import { createStudies } from '../../src/store/studies.ts';
import { DesignContext } from '../../src/ui/bench/DesignContext.ts';
import { StudiesContext } from '../../src/ui/studies/StudiesContext.ts';
import { silentPool } from './pools.ts';

/** Renders a piece of the page over a store of its own; studies stay silent. */
export function renderWithDesign(piece: ReactElement, design: Design = exampleById('eightResistors')) {
  const store = createDesignStore(design);
  const rendered = render(
    <DesignContext value={store}>
      <StudiesContext value={createStudies(silentPool)}>{piece}</StudiesContext>
    </DesignContext>,
  );
  return { store, ...rendered };
}
