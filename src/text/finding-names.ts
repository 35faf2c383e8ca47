import type { FindingCode } from '../../simulator/index.ts';

/** What each kind of finding is, to stand after “no”. */
export const FINDING_NAMES: { readonly [Code in FindingCode]: string } = {
  'arrives-twice': 'source that arrives twice',
  'inverted-path': 'source that arrives upright and inverted',
  'late-path': 'source that arrives again a little later',
  'stray-feed': 'main mix of the box on an output that something else uses',
  'line-unpatched': 'output of the converter that is in use and plugged nowhere',
  'output-unfed': 'output that nothing is plugged into',
  'goes-nowhere': 'track that reaches no output',
  'leg-missing': 'pair with one side missing',
  'legs-swapped': 'pair with its sides crossed',
  'legs-unpanned': 'pair with both sides in the middle',
  'send-nowhere': 'send that leads nowhere',
  'return-feeds-send': 'return that feeds its own send',
  'capture-plays-back': 'capture track that records what it plays back',
  loop: 'loop of another kind than a return or a capture track makes',
  'insert-not-returned': 'insert that is sent and not returned',
  'insert-not-sent': 'insert that is returned and not sent',
  ghost: 'effect that stays when the fader goes down',
  'post-fader-headphones': 'headphone mix taken after the fader',
  'over-full-scale': 'converter that is driven over full scale',
  'stage-clips': 'stage that clips',
  'low-level': 'input that is fed too softly',
  'box-fader': 'fader in the box away from unity',
};
