import { readFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { type Board, parseRig, type Setup } from '../../simulator/index.ts';

const fileOf = (name: string) =>
  fileURLToPath(new URL(`../../lessons/rigs/${name}.yaml`, import.meta.url));
const netLoft = readFileSync(fileOf('net-loft'), 'utf8');

/** The net-loft room, with more on its rack: an equaliser, a delay and a second reverb. */
const MORE_ON_THE_RACK = `rack:
  - { id: eq, label: Equaliser, kind: equaliser }
  - { id: echo, label: Echo, kind: delay }
  - { id: chamber, label: Chamber, kind: reverb }`;
export const deskRig = parseRig('net-loft.yaml', netLoft.replace('rack:', MORE_ON_THE_RACK));

/** A large desk with a control room. */
const splitDesk = parseRig('split-desk.yaml', readFileSync(fileOf('split-desk'), 'utf8'));

/** Eleven ways to set up the net-loft room and one of another, by what each holds. */
export const SETUPS: Readonly<Record<string, Setup>> = Object.fromEntries([
  ['a large desk with a control room', { rig: splitDesk, board: {} }],
  ...Object.entries<Board>({
    'as one finds it': {},
    'pans, faders, a mute': {
      'desk.ch1.pan': -0.6,
      'desk.ch2.pan': 0.35,
      'desk.ch3.fader': -7.4,
      'desk.ch5.mute': true,
      'desk.ch8.fader': 4.2,
      'desk.main.fader': -3.1,
    },
    'sends before and after the fader': {
      'desk.ch1.aux1': -4.5,
      'desk.ch1.aux1.tap': 'pre',
      'desk.ch1.fader': -12,
      'desk.ch3.aux1': -9.5,
      'desk.ch3.fader': -6,
      'desk.ch2.aux2': -2,
      'desk.aux1.level': -1.5,
    },
    'a compressor in line, working': {
      'rack.comp.in': 'desk.ch3.insert.send',
      'desk.ch3.insert.return': 'rack.comp.out',
      'rack.comp.threshold': -12,
      'rack.comp.ratio': '4',
      'rack.comp.makeup': 5,
    },
    'a compressor on both sides of the mix': {
      'rack.duo.in.l': 'desk.main.insert.send.l',
      'rack.duo.in.r': 'desk.main.insert.send.r',
      'desk.main.insert.return.l': 'rack.duo.out.l',
      'desk.main.insert.return.r': 'rack.duo.out.r',
      'rack.duo.threshold': -4,
      'rack.duo.ratio': '3',
      'rack.duo.knee': 6,
    },
    'an equaliser in line': {
      'rack.eq.in': 'desk.ch8.insert.send',
      'desk.ch8.insert.return': 'rack.eq.out',
      'rack.eq.highpass': '90',
      'rack.eq.low': -6,
      'rack.eq.mid-frequency': '1250',
      'rack.eq.mid': 7.5,
      'rack.eq.high': 4,
    },
    'an echo in line, and the same track dry': {
      'rack.echo.in': 'desk.aux1.out',
      'out.headphones-a': 'desk.aux2.out',
      'out.headphones-b': 'none',
      'desk.ret1.in.l': 'rack.echo.out',
      'desk.ret1.in.r': 'none',
      'rack.echo.time': '2',
      'rack.echo.level': -3,
      'desk.ch2.aux1': -2,
      'desk.ch2.aux2': -6,
    },
    'an echo that feeds itself': {
      'rack.echo.in': 'desk.aux1.out',
      'out.headphones-a': 'none',
      'rack.plate.in': 'none',
      'desk.ret1.in.l': 'rack.echo.out',
      'desk.ret1.in.r': 'none',
      'rack.echo.time': '120',
      'rack.echo.feedback': -6,
      'desk.ch2.aux1': -2,
    },
    'polarity, and one track by two ways': {
      'desk.ch2.polarity': true,
      'box.tenor.to': 'out1',
      'box.alto.to': 'out1',
      'desk.ch2.in': 'converter.out2',
      'desk.ch3.polarity': true,
      'desk.ch3.sub1': true,
      'desk.sub1.fader': -5,
    },
    'a reverb behind the fader': {
      'desk.ch1.aux3': -8,
      'desk.ch3.aux3': -3,
      'desk.ch3.fader': -4,
      'desk.ch6.aux3': -10,
      'rack.plate.level': -2,
      'desk.ret1.pan': 0.3,
    },
    'a reverb before the fader, and a filtered one': {
      'desk.ch1.aux3': -2,
      'desk.ch1.aux3.tap': 'pre',
      'desk.ch1.fader': -20,
      'rack.eq.in': 'desk.ch4.insert.send',
      'desk.ch4.insert.return': 'rack.chamber.out',
      'rack.chamber.in': 'rack.eq.out',
      'rack.eq.high': -9,
      'rack.eq.highpass': '200',
    },
  }).map(([title, board]) => [title, { rig: deskRig, board }] as const),
]);
