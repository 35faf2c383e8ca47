/** A setup file as data, by its documented format: all that the oracles here know of the project. */

export type Value = number | boolean | string;
export type Values = Readonly<Record<string, Value>>;
export type PanLaw = 'equal-power' | 'compromise' | 'linear';
export type StripStage = 'trim' | 'polarity' | 'insert' | 'fader' | 'mute' | 'pan';
export type Tap = 'pre' | 'post' | 'switchable';
export type DeviceKind = 'gain' | 'compressor' | 'equaliser' | 'delay' | 'reverb';

interface Named {
  readonly id: string;
  readonly label: string;
}

export interface TrackData extends Named {
  readonly levelDbfs: number;
  readonly stereo: boolean;
}

export interface StripTypeData {
  readonly id: string;
  readonly stereo: boolean;
  readonly stages: readonly StripStage[];
  readonly taps: { readonly pre: StripStage; readonly post: StripStage };
}

export interface StripData extends Named {
  readonly mark: string;
  readonly type: string;
}

export interface DeviceData extends Named {
  readonly kind: DeviceKind;
  readonly inputs: 1 | 2;
  readonly outputs: 1 | 2;
}

export interface PointData {
  readonly top?: string | undefined;
  readonly bottom?: string | undefined;
}

export interface BayData {
  readonly rows: readonly (Named & {
    readonly kind: 'full' | 'half' | 'open';
    readonly points: readonly PointData[];
  })[];
  readonly mults: readonly (Named & { readonly outputs: number })[];
  readonly outputOhms: number;
  readonly inputOhms: number;
}

export interface RigData extends Named {
  readonly box: {
    readonly tracks: readonly TrackData[];
    readonly buses: readonly Named[];
    readonly panLaw: PanLaw;
  };
  readonly converter: { readonly outputs: number; readonly fullScaleDbu: number };
  readonly desk: {
    readonly panLaw: PanLaw;
    readonly stripTypes: readonly StripTypeData[];
    readonly strips: readonly StripData[];
    readonly auxes: readonly (Named & { readonly tap: Tap })[];
    readonly subgroups: readonly Named[];
  };
  readonly rack: readonly DeviceData[];
  readonly bay?: BayData;
  readonly outputs: readonly (Named & { readonly stereo: boolean })[];
  readonly defaults: Values;
}

export interface SetupData {
  readonly format: 'tap-and-sum/setup';
  readonly version: 1;
  readonly title: string;
  readonly rig: RigData;
  readonly board: Values;
}

/** The names of a place: itself, or with a leg each. */
export const legs = (place: string, stereo: boolean): readonly string[] =>
  stereo ? [`${place}.l`, `${place}.r`] : [place];
