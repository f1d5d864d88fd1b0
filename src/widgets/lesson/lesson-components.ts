import BehindFigure from '../figures/behind/BehindFigure.astro';
import ClampsFigure from '../figures/clamps/ClampsFigure.astro';
import ErrorsFigure from '../figures/errors/ErrorsFigure.astro';
import FitFigure from '../figures/fit/FitFigure.astro';
import FreshNumbers from './fresh-numbers/FreshNumbers.astro';
import GlueFigure from '../figures/glue/GlueFigure.astro';
import JointDrawing from '../figures/joint-drawing/JointDrawing.astro';
import JointFigure from '../figures/joint/JointFigure.astro';
import JointGallery from '../figures/joint/JointGallery.astro';
import LayoutFigure from '../figures/layout/LayoutFigure.astro';
import MarksFigure from '../figures/marks/MarksFigure.astro';
import NamedBoard from '../figures/marks/NamedBoard.astro';
import MoistureFigure from '../figures/moisture/MoistureFigure.astro';
import MovementFigure from '../figures/movement/MovementFigure.astro';
import PinChoiceFigure from '../figures/pin-choice/PinChoiceFigure.astro';
import PlanNumber from './plan-number/PlanNumber.astro';
import Prediction from './prediction/Prediction.astro';
import Question from './self-check/Question.astro';
import RuleDrawn from '../figures/rule/RuleDrawn.astro';
import RuleFigure from '../figures/rule/RuleFigure.astro';
import SelfCheck from './self-check/SelfCheck.astro';
import SetupSheetPreview from '../figures/setup-sheet/SetupSheetPreview.astro';
import ForInstructor from './shop-task/ForInstructor.astro';
import ShopTask from './shop-task/ShopTask.astro';
import SplitFigure from '../figures/split/SplitFigure.astro';
import StopFigure from '../figures/stop/StopFigure.astro';
import StrengthFigure from '../figures/strength/StrengthFigure.astro';
import Term from './term/Term.astro';
import WorkingOrderFigure from '../figures/working-order/WorkingOrderFigure.astro';
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
