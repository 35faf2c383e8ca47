/** The one public door of the simulator. */

export type { Board, Setup } from './board/board.ts';
export {
  addressesMoved,
  DEFAULT_BOARD,
  isOn,
  numberAt,
  pickAt,
  standAlike,
  valueAt,
  withValues,
} from './board/board.ts';
export { boardData } from './board/board-data.ts';
export type { BoardContext, BoardEvent, BoardInput } from './board/board-machine.ts';
export { boardMachine } from './board/board-machine.ts';
export type { Edit, Refusal } from './board/edit.ts';
export type { Feed } from './board/feeds.ts';
export { cordFrom, driverOf, feedOf, inputsFedBy } from './board/feeds.ts';
export { boardOf } from './board/file-board.ts';
export type { Move } from './board/moves.ts';
export { movesBetween } from './board/moves.ts';
export type { SetupFile } from './board/setup-file.ts';
export { parseRig, parseSetup, setupData, setupSchema } from './board/setup-file.ts';
export type { Circuit, Signal, Stage, Wire } from './circuit/circuit.ts';
export type { Soloing } from './circuit/solo.ts';
export { soloingOf } from './circuit/solo.ts';
export { checkDocument } from './file/check-document.ts';
export type { Problem } from './file/input-error.ts';
export { InputError } from './file/input-error.ts';
export { nearestNames } from './file/nearest-names.ts';
export { placeText } from './file/place.ts';
export { type FileDocument, MAX_FILE_LENGTH, readDocument } from './file/read-document.ts';
export { readJson } from './file/read-json.ts';
export type { Answer, AnswerOf } from './grade/answer.ts';
export { answerSchema } from './grade/answer.ts';
export type { Forgotten } from './grade/candidates.ts';
export { candidateClaims, forgottenMoves } from './grade/candidates.ts';
export type { Check, Claim, ClaimOf, Probe } from './grade/check.ts';
export { checkSchema } from './grade/check.ts';
export { grade } from './grade/grade.ts';
export { judge } from './grade/judge.ts';
export { isOpen, lockedControls, matches } from './grade/locks.ts';
export type { Mark, MarkedPart } from './grade/mark.ts';
export { markAnswer } from './grade/mark.ts';
export type { MarkedQuestion } from './grade/mark-question.ts';
export { markQuestion } from './grade/mark-question.ts';
export type { OptionResult } from './grade/option-results.ts';
export { optionResults } from './grade/option-results.ts';
export type { Question, QuestionKind, QuestionOf } from './grade/question.ts';
export type { Quiz } from './grade/quiz.ts';
export { parseQuiz, quizSchema } from './grade/quiz.ts';
export { ANSWER_KINDS, rightAnswer } from './grade/right-answer.ts';
export type { Proof, Scenario } from './grade/scenario.ts';
export { parseScenario, scenarioSchema } from './grade/scenario.ts';
export { SIMULATOR_VERSION } from './grade/simulator-version.ts';
export type { TaskDraft } from './grade/task-draft.ts';
export { readTaskDraft, taskDraftText } from './grade/task-draft.ts';
export type { Checked, TaskEvent, TaskInput, TaskSnapshot } from './grade/task-machine.ts';
export { taskMachine } from './grade/task-machine.ts';
export type {
  CheckResult,
  Heard,
  Judgement,
  Reason,
  SignalCount,
  Verdict,
} from './grade/verdict.ts';
export type { WalkThrough, WalkThroughStep } from './grade/walk-through.ts';
export { parseWalkThrough, walkThroughSchema } from './grade/walk-through.ts';
export type { DrillFault, FaultCode, Wish, WishCode } from './puzzle/draft.ts';
export type { Drill } from './puzzle/drill.ts';
export { drillOf } from './puzzle/drill.ts';
export type { DrillConcept, DrillLevel } from './puzzle/drill-name.ts';
export { DRILL_CONCEPTS, DRILL_LEVELS } from './puzzle/drill-name.ts';
export type { Complaint, Oddity, Symptom } from './puzzle/hunt/complaint.ts';
export type { HuntDraft } from './puzzle/hunt/draft.ts';
export { fromDraft, huntDraftSchema, toDraft } from './puzzle/hunt/draft.ts';
export type { HuntFault } from './puzzle/hunt/fault.ts';
export { faultId, partnerOf } from './puzzle/hunt/fault.ts';
export type { Hunt } from './puzzle/hunt/hunt.ts';
export { hunt } from './puzzle/hunt/hunt.ts';
export type { HuntEvent, HuntSnapshot } from './puzzle/hunt/hunt-machine.ts';
export { huntMachine } from './puzzle/hunt/hunt-machine.ts';
export type {
  Contradiction,
  HuntStep,
  JudgedAccusation,
  JudgedProbe,
  JudgedStep,
  ProbeReading,
  Worth,
} from './puzzle/hunt/judge-steps.ts';
export { contradictionOf, judgeSteps, readPlace } from './puzzle/hunt/judge-steps.ts';
export { HUNT_LEVELS } from './puzzle/hunt/level.ts';
export type { Reading } from './puzzle/hunt/reading.ts';
export { lookAlike } from './puzzle/hunt/reading.ts';
export type { HuntScore } from './puzzle/hunt/score.ts';
export { scoreHunt } from './puzzle/hunt/score.ts';
export type { Suspect } from './puzzle/hunt/suspects.ts';
export { isPar } from './puzzle/par.ts';
export { RandomStream } from './puzzle/random-stream.ts';
export { SEED } from './puzzle/seed.ts';
export * from './rig/address.ts';
export type { BayPoint } from './rig/bay.ts';
export { bayPoints } from './rig/bay.ts';
export type { BoxChannel, PluginAt } from './rig/box-channels.ts';
export { boxChannels, pluginAddress, pluginAt, sendBusAt, takesSends } from './rig/box-channels.ts';
export type {
  ChoiceControl,
  Control,
  ControlValue,
  CordControl,
  GainControl,
  Misfit,
  Option,
  PanControl,
  SwitchControl,
} from './rig/control.ts';
export { misfitOf, NONE, OPEN } from './rig/control.ts';
export type { Controls } from './rig/controls.ts';
export { controls } from './rig/controls.ts';
export { jacks } from './rig/jacks.ts';
export { fullLabel, ownerLabel, partLabel } from './rig/labels.ts';
export type { Normal } from './rig/normals.ts';
export { normals } from './rig/normals.ts';
export type {
  Aux,
  BoxBus,
  Capture,
  Device,
  FileBoard,
  Output,
  Plugin,
  Rig,
  Strip,
  StripStage,
  StripType,
  Subgroup,
  Track,
} from './rig/schema.ts';
export { fileBoardSchema, rigSchema } from './rig/schema.ts';
export {
  auxesOf,
  busesOf,
  firstPathOf,
  isStereoSubgroup,
  listens,
  secondPathOf,
} from './rig/strip-routes.ts';
export type { Headroom } from './solve/headroom.ts';
export { clippingStages, firstToClip, headroomAt, peakAt } from './solve/headroom.ts';
export type { Level } from './solve/levels.ts';
export { levelAt, levelOf, levelsFrom, placesReached } from './solve/levels.ts';
export type { Loop } from './solve/loop.ts';
export type { NoiseShare } from './solve/noise.ts';
export { noiseAt, noiseShares } from './solve/noise.ts';
export { response } from './solve/response.ts';
export { simulate } from './solve/simulate.ts';
export type { Solution } from './solve/solution.ts';
export type { WorkingCompressor } from './solve/working-compressors.ts';
export { workingCompressors } from './solve/working-compressors.ts';
export { copiesOf } from './trace/copies.ts';
export type {
  Doubling,
  Finding,
  FindingCode,
  FindingOf,
  Overshoot,
  PairPlace,
  Ring,
  Severity,
} from './trace/findings/finding.ts';
export { ECHO_AFTER, FINDING_CODES, LOW_LEVEL } from './trace/findings/finding.ts';
export { findings } from './trace/findings.ts';
export type { LegLevel, Path, PathStep } from './trace/path.ts';
export { passes, placesOf } from './trace/path.ts';
export { MOST_PATHS, paths } from './trace/paths.ts';
export type { Stop } from './trace/stops.ts';
export { stopOf } from './trace/stops.ts';
export type { LevelToward } from './trace/toward.ts';
export { levelsToward } from './trace/toward.ts';
export type { Biquad } from './units/biquad.ts';
export type { CompressionCurve } from './units/compression.ts';
export { compressedLevel } from './units/compression.ts';
export { FADER_FLOOR, FADER_TOP, faderGain, faderPosition } from './units/fader.ts';
export type { Hz, Seconds } from './units/frequency.ts';
export { GRID, THIRD_OCTAVES, thirdOctaveCentre } from './units/frequency.ts';
export * from './units/level.ts';
export type { Ohms } from './units/loading.ts';
export { inParallel, loadedRatio } from './units/loading.ts';
export { METER_MARKS, meterShare } from './units/meter-scale.ts';
export { BOLTZMANN, NOISE_BANDWIDTH, summingNoiseGain, thermalNoise } from './units/noise.ts';
export type { PanLaw } from './units/pan.ts';
export { PAN_LAWS, panMono } from './units/pan.ts';
export { sumCoherent, sumUncorrelated } from './units/sum.ts';
