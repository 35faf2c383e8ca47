import type { Hunt, ProbeReading } from '../../../simulator/index.ts';
import {
  capitalised,
  type LevelScale,
  placeName,
  readingText,
  readingVerdict,
} from '../../text/index.ts';

interface Props {
  hunt: Hunt;
  readings: readonly ProbeReading[];
  scale: LevelScale;
}

/** What was read so far, beside what would have been read if all stood as written down. */
export function HuntReadings({ hunt, readings, scale }: Props) {
  if (readings.length === 0) return <p>Nothing was read yet.</p>;
  return (
    <table>
      <thead>
        <tr>
          <th scope="col">Reading</th>
          <th scope="col">Behind</th>
          <th scope="col">As written down</th>
          <th scope="col">Read</th>
          <th scope="col">That is</th>
        </tr>
      </thead>
      <tbody>
        {readings.map((reading, index) => (
          <tr key={`${index} ${reading.place}`}>
            <td>{index + 1}</td>
            <th scope="row">{capitalised(placeName(hunt.setup.rig, reading.place))}</th>
            <td>{readingText(reading.meant, scale)}</td>
            <td>{readingText(reading.found, scale)}</td>
            <td>{readingVerdict(reading)}</td>
          </tr>
        ))}
      </tbody>
    </table>
  );
}
