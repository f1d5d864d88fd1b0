import BehindFigure from './behind-figure/BehindFigure.astro';
import ClampsFigure from './clamps-figure/ClampsFigure.astro';
import ErrorsFigure from './errors-figure/ErrorsFigure.astro';
import FitFigure from './fit-figure/FitFigure.astro';
import FreshNumbers from './fresh-numbers/FreshNumbers.astro';
import GlueFigure from './glue-figure/GlueFigure.astro';
import JointDrawing from './joint-drawing/JointDrawing.astro';
import JointFigure from './joint-figure/JointFigure.astro';
import JointGallery from './joint-figure/JointGallery.astro';
import LayoutFigure from './layout-figure/LayoutFigure.astro';
import MarksFigure from './marks-figure/MarksFigure.astro';
import NamedBoard from './marks-figure/NamedBoard.astro';
import MoistureFigure from './moisture-figure/MoistureFigure.astro';
import MovementFigure from './movement-figure/MovementFigure.astro';
import PinChoiceFigure from './pin-choice-figure/PinChoiceFigure.astro';
import PlanNumber from './plan-number/PlanNumber.astro';
import Prediction from './prediction/Prediction.astro';
import Question from './self-check/Question.astro';
import RuleDrawn from './rule-figure/RuleDrawn.astro';
import RuleFigure from './rule-figure/RuleFigure.astro';
import SelfCheck from './self-check/SelfCheck.astro';
import SetupSheetPreview from './setup-sheet-preview/SetupSheetPreview.astro';
import ForInstructor from './shop-task/ForInstructor.astro';
import ShopTask from './shop-task/ShopTask.astro';
import SplitFigure from './split-figure/SplitFigure.astro';
import StopFigure from './stop-figure/StopFigure.astro';
import StrengthFigure from './strength-figure/StrengthFigure.astro';
import Term from './term/Term.astro';
import WorkingOrderFigure from './working-order-figure/WorkingOrderFigure.astro';
import CompareTable from './worked-example/CompareTable.astro';
import Signs from './worked-example/Signs.astro';
import Step from './worked-example/Step.astro';

/**
 * The components that a lesson may name, besides the typographic ones of the lesson page. This is
 * the only place that knows them: a lesson has no imports.
 *
 * Each is a small `.astro` wrapper next to its island. The wrapper checks its properties with
 * `lessonProps` and a `z.strictObject`, so that a mistake in a lesson fails the build with its
 * file and line, and it holds `client:visible` (a Svelte component handed to MDX as it is would
 * come out dead):
 *
 * ```astro
 * ---
 * import { z } from 'astro/zod';
 * import { lessonProps } from '../lesson-props.ts';
 * import DepthFigure from './DepthFigure.svelte';
 *
 * const schema = z.strictObject({ thickness: z.number() });
 * const { thickness } = lessonProps('DepthFigure', schema, Astro.props);
 * ---
 *
 * <DepthFigure {thickness} client:visible />
 * ```
 */
export const lessonComponents = {
  BehindFigure,
  ClampsFigure,
  CompareTable,
  ErrorsFigure,
  FitFigure,
  ForInstructor,
  FreshNumbers,
  GlueFigure,
  JointDrawing,
  JointFigure,
  JointGallery,
  LayoutFigure,
  MarksFigure,
  MoistureFigure,
  MovementFigure,
  NamedBoard,
  PinChoiceFigure,
  PlanNumber,
  Prediction,
  Question,
  RuleDrawn,
  RuleFigure,
  SelfCheck,
  SetupSheetPreview,
  ShopTask,
  Signs,
  SplitFigure,
  Step,
  StopFigure,
  StrengthFigure,
  Term,
  WorkingOrderFigure,
};
