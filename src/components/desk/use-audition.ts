import { useCallback, useEffect, useRef, useState } from 'preact/hooks';
import type { Db, Rig } from '../../../simulator/index.ts';
import { Audition, type End } from '../../audition/audition.ts';
import type { Listening } from '../../audition/listening.ts';

/** How it stands with hearing a desk. */
interface AuditionState {
  readonly state: 'silent' | 'tuning' | 'sounding';
  /** Why it ended the last time. */
  readonly ended: End | undefined;
  /** Begins; to be called while a click or a key is handled. */
  readonly start: () => void;
  readonly stop: () => void;
}

/** Plays a desk while asked to, and follows what is heard of it and how loud. Another rig ends it. */
export function useAudition(rig: Rig, listening: Listening, volume: Db): AuditionState {
  const audition = useRef<Audition>();
  const played = useRef<Rig>();
  const [state, setState] = useState<AuditionState['state']>('silent');
  const [ended, setEnded] = useState<End>();
  const now = useRef({ listening, volume });
  now.current = { listening, volume };

  const stop = useCallback(() => audition.current?.end('asked'), []);
  const start = () => {
    played.current = rig;
    const begun = new Audition((end) => {
      audition.current = undefined;
      setState('silent');
      setEnded(end);
    });
    audition.current = begun;
    setState('tuning');
    void begun
      .begin(rig, () => now.current)
      .then((isSounding) => {
        if (isSounding) setState('sounding');
      });
  };

  useEffect(() => {
    if (played.current === rig) audition.current?.follow(listening);
    else stop();
  }, [rig, listening, stop]);
  useEffect(() => audition.current?.setVolume(volume), [volume]);
  useEffect(() => stop, [stop]);
  return { state, ended, start, stop };
}
