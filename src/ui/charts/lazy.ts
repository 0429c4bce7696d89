import { lazy } from 'react';

/** The chart library comes after the form and the verdict, in chunks of its own. */
export const FanCurveChart = lazy(() => import('./FanCurveChart.tsx'));
export const LadderChart = lazy(() => import('./LadderChart.tsx'));
export const PositionsChart = lazy(() => import('./PositionsChart.tsx'));
export const LinesChart = lazy(() => import('./LinesChart.tsx'));
export const HistogramChart = lazy(() => import('./HistogramChart.tsx'));
export const GapChart = lazy(() => import('./GapChart.tsx'));
export const EvidenceChart = lazy(() => import('./EvidenceChart.tsx'));
export const GapMapChart = lazy(() => import('./GapMapChart.tsx'));
export const ResidualsChart = lazy(() => import('./ResidualsChart.tsx'));
