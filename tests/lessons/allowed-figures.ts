/**
 * Figures that the prose of a lesson or an article may write out. All other levels come from `<Level>` and
 * `<Reading>`, which compute them, so that no page says a number that the desk does not.
 */
export interface AllowedFigure {
  readonly figure: string;
  /** It is a setting: the control that stands so on a board of the lesson. */
  readonly settingOf?: string;
  /** It is no level of the desk: where it is from. */
  readonly reason?: string;
}

/** By the slug of the lesson or article. Each has to be found in it. */
export const ALLOWED_FIGURES: Readonly<Record<string, readonly AllowedFigure[]>> = {
  level: [
    { figure: '6 dB', reason: 'gain of a doubled voltage, by the meaning of the decibel' },
    { figure: '+22 dBu', reason: 'full scale of the rig' },
    { figure: '−19 dBFS', reason: 'level of the cello in the rig' },
    { figure: '+4 dBu', reason: 'line level, common practice' },
    { figure: '0 dB', reason: 'unity, by its meaning' },
    { figure: '+6', settingOf: 'desk.ch3.trim' },
    { figure: '−10', settingOf: 'desk.ch3.fader' },
    { figure: '24 dBu', reason: 'clip level of the desk of the rig' },
    { figure: '12 dB', reason: 'crest of the players in the rig' },
    { figure: '+20', settingOf: 'desk.ch3.trim' },
    { figure: '−20', settingOf: 'desk.ch3.fader' },
    { figure: '+10', settingOf: 'desk.ch3.fader' },
    { figure: '10 dB', reason: 'trim at −20 and fader at +10, added' },
    { figure: '85 dBA', reason: 'exposure limit of NIOSH, in the list of sources' },
    { figure: '3 dB', reason: 'exchange rate of NIOSH, in the list of sources' },
  ],
  'out-of-the-box': [
    { figure: '+22 dBu', reason: 'full scale of the rig' },
    { figure: '−19 dBFS', reason: 'level of the cello in the rig' },
    { figure: '−24 dBFS', reason: 'level of the dulcimer in the rig' },
    { figure: '−18 dBFS', reason: 'alignment of EBU R 68, in the list of sources' },
    { figure: '0 dBu', reason: 'alignment of EBU R 68, in the list of sources' },
    { figure: '−20 dBFS', reason: 'alignment of SMPTE RP 155, in the list of sources' },
    { figure: '+4 dBu', reason: 'alignment of SMPTE RP 155, in the list of sources' },
  ],
  'insert-or-send': [
    { figure: '−9 dBu', settingOf: 'rack.comp.threshold' },
    { figure: '−6', settingOf: 'desk.ch2.aux3' },
  ],
  'before-or-after-the-fader': [
    { figure: '−9', settingOf: 'desk.ch3.aux3' },
    { figure: '−6', settingOf: 'desk.ch3.aux1' },
    { figure: '−10', settingOf: 'desk.ch3.fader' },
    { figure: '10 dB', reason: 'what a fader at −10 takes away, by the meaning of its scale' },
    { figure: '85 dBA', reason: 'exposure limit of NIOSH, in the list of sources' },
    { figure: '3 dB', reason: 'exchange rate of NIOSH, in the list of sources' },
    { figure: '80 dBA', reason: 'reference of WHO and ITU, in the list of sources' },
  ],
  'blend-in-the-box': [{ figure: '+9', settingOf: 'box.blend.fader' }],
  'what-comes-first': [
    { figure: '−3 dBu', settingOf: 'rack.comp.threshold' },
    { figure: '−6', settingOf: 'desk.ch1.fader' },
    { figure: '−20', settingOf: 'desk.ch2.fader' },
  ],
  'the-staircase': [
    { figure: '−18 dBFS', reason: 'level of the tone of the rig, in its file' },
    { figure: '22 dBu', reason: 'full scale of the rig' },
    {
      figure: '3 dB',
      reason: 'pan law in the middle, and exchange rate of NIOSH in the list of sources',
    },
    { figure: '+8', settingOf: 'desk.ch1.trim' },
    { figure: '−5 dB', settingOf: 'rack.line.gain' },
    { figure: '−6', settingOf: 'desk.ch1.fader' },
    { figure: '−4', settingOf: 'desk.sub1.fader' },
    { figure: '+7', settingOf: 'desk.main.fader' },
    { figure: '+20', settingOf: 'desk.ch2.trim' },
    { figure: '+10', settingOf: 'desk.ch2.fader' },
    { figure: '−10', reason: 'a setting that is spoken of and not made' },
    { figure: '85 dBA', reason: 'exposure limit of NIOSH, in the list of sources' },
  ],
  'a-send-has-no-return': [
    { figure: '−6', settingOf: 'desk.ch2.aux3' },
    { figure: '−12', settingOf: 'desk.ret1.aux3' },
    { figure: '−3', reason: 'a send that leaves no level, as in said-in-prose.test.ts' },
  ],
  'effects-in-the-box': [
    { figure: '−9', settingOf: 'box.alto.hall' },
    { figure: '−10', settingOf: 'desk.ch2.fader' },
  ],
  'pan-pairs-and-mono': [
    {
      figure: '3 dB',
      reason: 'pan law of the desk and what a side loses in mono: said-in-prose.test.ts',
    },
  ],
  'print-the-mix': [
    { figure: '−4', settingOf: 'desk.main.fader' },
    { figure: '−6', settingOf: 'desk.st1.fader' },
  ],
  'subgroups-in-series': [
    { figure: '−10', settingOf: 'desk.sub1.fader' },
    { figure: '−6', settingOf: 'desk.ch1.aux3' },
    { figure: '−20', settingOf: 'desk.ch1.fader' },
    { figure: '+10', settingOf: 'desk.sub1.fader' },
  ],
  'subgroup-and-main': [{ figure: '−20', settingOf: 'desk.ch3.trim' }],
  'the-bay': [{ figure: '−8', settingOf: 'rack.comp.threshold' }],
  'three-kinds-of-desk': [{ figure: '−10', settingOf: 'desk.ch4.fader' }],
  'write-it-down': [
    { figure: '−9', settingOf: 'rack.comp.threshold' },
    { figure: '+4', settingOf: 'rack.comp.makeup' },
    { figure: '−5', settingOf: 'desk.ch3.fader' },
    { figure: '+3', settingOf: 'box.cello.fader' },
  ],
  'the-net-loft-mix': [
    { figure: '85 dBA', reason: 'exposure limit of NIOSH, in the list of sources' },
  ],
  'hearing-without-changing': [
    { figure: '−20', settingOf: 'desk.main.fader' },
    { figure: '−5', settingOf: 'desk.ch3.fader' },
    { figure: '85 dBA', reason: 'exposure limit of NIOSH, in the list of sources' },
    { figure: '3 dB', reason: 'exchange rate of NIOSH, in the list of sources' },
  ],
  numbers: [
    { figure: '−18 dBFS', reason: 'alignment of EBU R 68, and of common practice' },
    { figure: '0 dBu', reason: 'line-up that EBU R 68 is used with' },
    { figure: '18 dBu', reason: 'full scale by EBU R 68: 18 dB above its line-up' },
    { figure: '−20 dBFS', reason: 'reference of SMPTE RP 155' },
    { figure: '+4 dBu', reason: 'reference of SMPTE RP 155, and of common practice' },
    { figure: '24 dBu', reason: 'full scale by SMPTE RP 155: 20 dB above its reference' },
    { figure: '22 dBu', reason: 'full scale of the rigs on the page' },
    { figure: '1 dB', reason: 'how far a fader is pulled, and what one round of a loop loses' },
    { figure: '6 dB', reason: 'how far a fader is pulled, and what one round of a loop loses' },
    { figure: '0.2 dB', reason: 'tolerance of the means over combs in tests/published' },
    { figure: '−4 dBu', reason: 'threshold of the compressor of the rig' },
    { figure: '−100 dBu', reason: 'noise of the summing amplifier of its rig' },
    { figure: '3 dB', reason: 'two sides count in power' },
    { figure: '0 dB', reason: 'crest of a sine, by its meaning' },
    { figure: '+15', settingOf: 'desk.ch1.trim' },
  ],
};

/** Figures in dB in the words of tasks that are no difference of what stands or is heard there, by task and step or question. */
export const ALLOWED_GAINS: Readonly<Record<string, readonly AllowedFigure[]>> = {
  'twice-and-never/mix-out': [
    { figure: '7 dB', reason: '“more than”: what the meter says is 7.7 dB' },
  ],
  'what-comes-first/driven-by-the-trim': [
    { figure: '4 dB', reason: 'what a ratio of 4 : 1 makes 1 dB of, by its meaning' },
    { figure: '1 dB', reason: 'a quarter of 4 dB, by the same ratio' },
  ],
};
