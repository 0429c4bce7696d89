import type { PartId } from '../report/drawing.ts';
import type { Headline } from '../report/types.ts';
import { useActions, useDesign, useDesignStore } from '../ui/bench/DesignContext.ts';
import { AirKey } from '../ui/drawing/AirKey.tsx';
import { BoxDrawing } from '../ui/drawing/BoxDrawing.tsx';
import { PartChooser } from '../ui/drawing/PartChooser.tsx';
import { StackDetail } from '../ui/drawing/StackDetail.tsx';
import { ViewBoundary } from './ErrorBoundary.tsx';
import { moveToFields } from './moveToFields.ts';
import styles from './Page.module.css';

interface Props {
  readonly report: Headline;
  /** Takes the place for what comes a moment later. */
  readonly onPlace: (place: HTMLElement | null) => void;
}

/** The box, to scale, its key and detail, and the list of parts: three ways to choose what the fields show. */
export function DrawingSection({ report, onPlace }: Props) {
  const store = useDesignStore();
  const selected = useDesign(({ selectedPart }) => selectedPart);
  const problems = useDesign((state) => state.problems);
  const { selectPart } = useActions();
  const choose = (part: PartId) => {
    selectPart(part);
    moveToFields();
  };
  return (
    <section className={styles.drawing} aria-labelledby="drawing-heading">
      <h2 id="drawing-heading" className="unseen">
        The box, to scale
      </h2>
      <ViewBoundary store={store} name="the drawing" of={report}>
        <figure className={styles.figure}>
          <BoxDrawing model={report.drawing} selected={selected} onSelect={choose} />
          <figcaption className={styles.foot}>
            <AirKey report={report} />
            <StackDetail model={report.drawing} selected={selected} onSelect={choose} />
            <div ref={onPlace} className={styles.save} />
          </figcaption>
        </figure>
      </ViewBoundary>
      <PartChooser
        selected={selected}
        onSelect={selectPart}
        onPoint={moveToFields}
        wrong={problems.map(({ path }) => path)}
      />
    </section>
  );
}
