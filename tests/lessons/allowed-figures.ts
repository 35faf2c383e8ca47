/**
 * Figures that the prose of a lesson may write out. All other levels come from `<Level>`, which
 * computes them, so that no lesson says a number that the desk does not.
 */
export interface AllowedFigure {
  readonly figure: string;
  /** It is a setting: the control that stands so on a board of the lesson. */
  readonly settingOf?: string;
  /** It is no level of the desk: where it is from. */
  readonly reason?: string;
}

/** By the slug of the lesson. Each has to be found in it. */
export const ALLOWED_FIGURES: Readonly<Record<string, readonly AllowedFigure[]>> = {
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
};
