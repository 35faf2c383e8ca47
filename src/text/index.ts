/** Codes and numbers of the simulator as people read them. Every wording stands here once. */

export { amountText, frequencyText } from './amounts.ts';
export { answerText } from './answer-text.ts';
export { answerSentence, optionHead, optionHeardSentence } from './answers.ts';
export {
  attemptsText,
  closesSentence,
  handInSentences,
  itemStanding,
  rulesSentences,
} from './assignments.ts';
export { capitalised } from './capitalised.ts';
export { claimSentence, heardSentence, probeText, shownSentence } from './claims.ts';
export {
  difficultyWord,
  discriminationWord,
  handInNoteSentence,
  itemNoteSentence,
  learnersText,
  noMarkSentence,
  noMarkText,
  pointerSentence,
  spentText,
} from './class.ts';
export { elsewhereSentences, shortOption } from './desk-states.ts';
export { differenceLines, type LevelDifference, levelDifferences } from './differences.ts';
export { DRILL_NAMES } from './drill-names.ts';
export { drillScenario } from './drills.ts';
export { findingSentence, mendingSentence, severityWord } from './findings.ts';
export { levelOfHuntText } from './hunt-levels.ts';
export {
  complainerWords,
  complaintWords,
  contradictionSentence,
  faultText,
  readingSentence,
  readingText,
  readingVerdict,
  scoreSentence,
  strategySentence,
  suspectText,
  WORTH_WORDS,
  worthSentence,
} from './hunts.ts';
export {
  inUnit,
  LEVEL_UNITS,
  type LevelScale,
  type LevelUnit,
  markText,
  scaleIn,
  zeroOf,
} from './level-units.ts';
export { guardSentence, hearingSentence } from './listening.ts';
export { loopSentence } from './loops.ts';
export { type MeterReading, meterName, meterText } from './meters.ts';
export { cutSentence, moveText, spokenMove } from './moves.ts';
export {
  clippingSentence,
  compressionSentence,
  firstToClipSentence,
  headroomFigure,
  noiseSentence,
} from './noise.ts';
export { normalWords } from './normal-rows.ts';
export { normalText } from './normals.ts';
export { ownerName, sourceName } from './owners.ts';
export { parSentence } from './par.ts';
export { type PathRow, pathLine, pathRows, pathsSentence } from './paths.ts';
export { atGoal, goalName, placeName, playerNames } from './places.ts';
export { curveSentence, waySentence } from './plots.ts';
export {
  dayText,
  dueText,
  effortSentence,
  momentText,
  NOTHING_KEPT,
  STANDING_MEANINGS,
  STANDING_WORDS,
  shareText,
  unitText,
} from './progress.ts';
export {
  controlText,
  gainText,
  levelFigure,
  levelText,
  NO_LEVEL,
  panText,
  plugText,
  spokenControl,
  spokenGain,
  spokenLevel,
} from './quantities.ts';
export { type OptionText, optionsOf } from './question-options.ts';
export { reasonSentence } from './reasons.ts';
export { type PatchLine, patchLines, type RecallGroup, recallGroups } from './recall.ts';
export { refusalSentence } from './refusals.ts';
export { type ResponsePoint, responseSentence } from './responses.ts';
export { counted, listed, sentence } from './sentence.ts';
export { signed } from './signed.ts';
export { closedText, stopText } from './stops.ts';
export { pathStory } from './stories.ts';
export { movedLocksSentence, resultWord, verdictSentence } from './verdicts.ts';
