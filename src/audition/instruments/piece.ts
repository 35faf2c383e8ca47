/**
 * The small piece that the net-loft session plays: eight bars of three beats, in D dorian, made for this site.
 * It goes round without a seam.
 */

/** Frames in a second; all of the audition is reckoned at this rate, as the filters of the simulator are. */
export const SAMPLE_RATE = 48_000;
const FRAMES_PER_BEAT = 24_000;
const BEATS_PER_BAR = 3;
const BARS = 8;

/** Frames once round: 12 s. */
export const LOOP_LENGTH = BARS * BEATS_PER_BAR * FRAMES_PER_BEAT;

/** A note: when it begins and how long it lasts, in frames, and how high it is. */
export interface Note {
  readonly start: number;
  readonly length: number;
  /** In hertz. */
  readonly frequency: number;
  /** From 0 to 1. */
  readonly loudness: number;
}

/** Chords by bar, each from its root up, as letters of the scale. */
const CHORDS = ['D F A', 'C E G', 'D F A', 'A C E', 'F A C', 'G B D', 'A C E', 'D F A'];

const MELODIES = {
  tenor: 'A3/3 G3/2 C4/1 A3/3 E3/2 A3/1 C4/2 F4/1 D4/2 B3/1 C4/2 B3/1 A3/3',
  alto: 'F4/2 A4/1 G4/2 E4/1 F4/2 D4/1 E4/3 A4/2 C5/1 B4/2 G4/1 E4/1 G4/1 E4/1 D4/3',
  cello: 'D3/3 E3/3 F3/3 E3/3 C3/2 A2/1 G2/2 B2/1 A2/2 C3/1 D3/3',
  bass: 'D2/2 A1/1 C2/2 G1/1 D2/2 F2/1 A1/2 E2/1 F2/2 C2/1 G1/2 D2/1 A1/2 E2/1 D2/2 A1/1',
} as const;

/** Notes of one part, one after the other. */
export function melody(part: keyof typeof MELODIES): Note[] {
  let beat = 0;
  return MELODIES[part].split(' ').map((written) => {
    const [name = '', beats = '1'] = written.split('/');
    const note = noteAt(beat, Number(beats), frequencyOf(name), beat % BEATS_PER_BAR ? 0.8 : 1);
    beat += Number(beats);
    return note;
  });
}

/**
 * Chords broken up: in each bar, at these beats, these tones of its chord.
 *
 * @param tones by note: its beat in the bar, the number of its tone in the chord, its loudness.
 */
export function brokenChords(
  octave: number,
  tones: readonly (readonly [beat: number, tone: number, loudness: number])[],
): Note[] {
  return CHORDS.flatMap((chord, bar) =>
    tones.map(([beat, tone, loudness]) => {
      const letters = chord.split(' ');
      const letter = letters[tone % letters.length] ?? '';
      const name = `${letter}${octave + Math.floor(tone / letters.length)}`;
      return noteAt(bar * BEATS_PER_BAR + beat, 1, frequencyOf(name), loudness);
    }),
  );
}

/** Strokes in every bar, of no height. */
export const strokes = (beats: readonly (readonly [beat: number, loudness: number])[]): Note[] =>
  Array.from({ length: BARS }, (_, bar) =>
    beats.map(([beat, loudness]) => noteAt(bar * BEATS_PER_BAR + beat, 1, 0, loudness)),
  ).flat();

const noteAt = (beat: number, beats: number, frequency: number, loudness: number): Note => ({
  start: Math.round(beat * FRAMES_PER_BEAT),
  length: Math.round(beats * FRAMES_PER_BEAT),
  frequency,
  loudness,
});

/** Semitones from the C of an octave. */
const SEMITONES: Readonly<Record<string, number>> = { C: 0, D: 2, E: 4, F: 5, G: 7, A: 9, B: 11 };

/** Frequency of a note by its name, `A4`, in equal temperament. Source: ISO 16, A4 = 440 Hz. */
export function frequencyOf(name: string): number {
  const semitone = SEMITONES[name.charAt(0)];
  if (semitone === undefined) throw new RangeError(`Expected a note such as A4, but got ${name}.`);
  return 440 * 2 ** ((semitone - 9) / 12 + Number(name.slice(1)) - 4);
}
