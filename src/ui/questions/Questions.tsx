import type { Report } from '../../report/types.ts';
import { Compare } from './Compare.tsx';
import { DoesTheBenchAgree } from './DoesTheBenchAgree.tsx';
import { HowIsItComputed } from './HowIsItComputed.tsx';
import { QuestionIndex } from './QuestionIndex.tsx';
import { WhatIfPartsVary } from './WhatIfPartsVary.tsx';
import { WhatIfTheFanStops } from './WhatIfTheFanStops.tsx';
import { WhatIsItCheckedAgainst } from './WhatIsItCheckedAgainst.tsx';
import { WhatSizeDoINeed } from './WhatSizeDoINeed.tsx';
import { WhatToChangeFirst } from './WhatToChangeFirst.tsx';
import { WhatToCut } from './WhatToCut.tsx';
import { WhereDoesTheAirGo } from './WhereDoesTheAirGo.tsx';
import { WhereDoTheKelvinsGo } from './WhereDoTheKelvinsGo.tsx';
import { WhichGap } from './WhichGap.tsx';

/** The questions below the bench, in reading order; *Will it hold?* stands beside the drawing by itself. */
export function Questions({ report }: { readonly report: Report }) {
  return (
    <>
      <QuestionIndex />
      <WhatToChangeFirst />
      <WhereDoesTheAirGo report={report} />
      <WhereDoTheKelvinsGo report={report} />
      <WhichGap />
      <WhatIfTheFanStops report={report} />
      <WhatIfPartsVary />
      <WhatSizeDoINeed />
      <DoesTheBenchAgree />
      <Compare />
      <WhatToCut report={report} />
      <HowIsItComputed report={report} />
      <WhatIsItCheckedAgainst />
    </>
  );
}
