/** The calculator's front door. Lengths are millimeters; see MODEL.md for the model. */
export { type Mm, inches, mm } from './length/mm.ts';
export { type LengthUnit, type ParsedLength, parseLength } from './length/parseLength.ts';
export {
  type LengthFormat,
  formatLength,
  formatReadable,
  formatWorking,
  isRounded,
  spokenLength,
} from './length/formatLength.ts';
export { ShopSteps, type StepSize } from './length/shopSteps.ts';
export type * from './joint/types.ts';
export { planJoint } from './joint/planJoint.ts';
export { SpecError } from './joint/checkSpec.ts';
export { defaults } from './joint/defaults.ts';
export { DEFAULT_POINT } from './joint/tip.ts';
export { toMark } from './joint/spacing.ts';
export { type DecodedSetup, type Setup, decodeSetup, encodeSetup } from './setup/setupLink.ts';
export type { JointLabel, NamedBoard, PieceLabel } from './setup/labels.ts';
export { stockPins } from './stock/pins.ts';
export { type SoldGroup, type SoldSize, boardsAsSold } from './stock/boardsAsSold.ts';
export { shopTable } from './stock/diameterRules.ts';
export { type Species, species, speciesNames } from './moisture/species.ts';
export type { Expression } from './working/expression.ts';
export type { WorkingStep } from './working/types.ts';
export { type Ingredient, ingredients } from './working/ancestry.ts';
export type { Sentence } from './working/sentence.ts';
export { plainText, spokenText } from './working/plainText.ts';
export { stepMathML, toMathML } from './working/mathml.ts';
export { type Source, type SourceId, type Standing, sources } from './working/sources.ts';
export { type BenchSetup, type MemberSetup, type Stop, drill, soundSetup } from './trial/drill.ts';
export type { DrilledHole, Member, Trial, TrialPin } from './trial/trial.ts';
export { type Cause, type DryFit, dryFit } from './trial/dryFit.ts';
export { type ClosingOdds, type ClosingOddsInput, closingOdds } from './trial/closingOdds.ts';
export { type DrilledPin, type DrilledRow, drilledRow } from './trial/drilledRow.ts';
export type { RowErrors } from './trial/rowErrors.ts';
export { type Odds, wilson } from './trial/wilson.ts';
export { type Fit, type FitVerdict, fit, fitBands, publishedRanges } from './fit/fit.ts';
export { bitAsMade } from './fit/bitAsMade.ts';
export { type GlueRoom, type GlueRoomInput, dropOfGlue, glueRoom } from './fit/glueRoom.ts';
export { equilibriumMoisture, tableReach } from './moisture/equilibriumMoisture.ts';
export { coefficientsHold, dimensionalChange } from './moisture/dimensionalChange.ts';
export { publishedMoisture, publishedRow } from './moisture/publishedMoisture.ts';
export { type RowMovement, SEASON, rowMovement } from './moisture/rowMovement.ts';
export { type HoleAndPin, holeAndPin } from './moisture/holeAndPin.ts';
export { withdrawal } from './strength/withdrawal.ts';
export { caseCornerMoment } from './strength/caseCornerMoment.ts';
export { frameMoment } from './strength/frameMoment.ts';
export { clamps } from './strength/clamps.ts';
export { type Diagnosis, diagnose } from './trial/diagnose.ts';
export type { Signs } from './trial/signs.ts';
export { turnOverOffset } from './tools/turnOver.ts';
export { type FitCount, type Readings, countFits, summarize } from './tools/readings.ts';
export { type MeasuredTools, type ToolSet, measuredTools } from './tools/toolSet.ts';
