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

export interface PluginData extends Named {
  readonly kind: DeviceKind;
  readonly latencyMs: number;
}

export interface TrackData extends Named {
  readonly levelDbfs: number;
  readonly stereo: boolean;
  readonly plugins: readonly PluginData[];
}

export interface BoxBusData extends Named {
  readonly tap?: Tap;
  readonly plugins: readonly PluginData[];
}

export interface CaptureData extends Named {
  readonly stereo: boolean;
}

export interface BoxData {
  readonly tracks: readonly TrackData[];
  readonly buses: readonly BoxBusData[];
  readonly captures: readonly CaptureData[];
  readonly compensates: boolean;
  readonly panLaw: PanLaw;
}

export interface ConverterData {
  readonly outputs: number;
  readonly inputs: number;
  readonly fullScaleDbu: number;
  readonly noiseDbfs: number;
  readonly latencyMs: number;
}

export interface StripTypeData {
  readonly id: string;
  readonly stereo: boolean;
  readonly stages: readonly StripStage[];
  readonly taps: { readonly pre: StripStage; readonly post: StripStage };
  readonly directOut?: StripStage;
  readonly auxes?: readonly string[];
  readonly assigns?: readonly string[];
}

export interface StripData extends Named {
  readonly mark: string;
  readonly type: string;
  readonly inline?: string;
}

export interface SubgroupData extends Named {
  readonly takes: 'both' | 'left' | 'right';
  readonly main: boolean;
}

export type SoloMode = 'in-place' | 'pfl' | 'afl';

export interface DeskNoiseData {
  readonly line: number;
  readonly fader: number;
  readonly bus: number;
}

export interface DeskData {
  readonly panLaw: PanLaw;
  readonly noise: DeskNoiseData;
  readonly stripTypes: readonly StripTypeData[];
  readonly strips: readonly StripData[];
  readonly auxes: readonly (Named & { readonly tap: Tap })[];
  readonly subgroups: readonly SubgroupData[];
  readonly solo?: readonly SoloMode[];
  readonly controlRoom?: { readonly inputs: readonly Named[] };
}

export interface DeviceData extends Named {
  readonly kind: DeviceKind;
  readonly inputs: 1 | 2;
  readonly outputs: 1 | 2;
  readonly level: 'plus4' | 'minus10';
  readonly noiseDbu?: number;
}

export interface OutputData extends Named {
  readonly stereo: boolean;
  readonly noiseDbu?: number;
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
  readonly box: BoxData;
  readonly converter: ConverterData;
  readonly desk: DeskData;
  readonly rack: readonly DeviceData[];
  readonly bay?: BayData;
  readonly outputs: readonly OutputData[];
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
