import type { Remark } from '../../class/remarks.ts';
import { learnersText } from '../../text/index.ts';

interface Props {
  title: string;
  about?: string;
  remarks: readonly Remark[];
}

/** Things to know, each once with all of whom it holds; nothing where there are none. */
export function RemarkList({ title, about, remarks }: Props) {
  if (remarks.length === 0) return null;
  return (
    <>
      <h3>{title}</h3>
      {about && <p class="prose">{about}</p>}
      <ul class="prose">
        {remarks.map(({ words, learners }) => (
          <li key={words}>
            {words}
            {learners.length > 0 && <span class="whom"> {learnersText(learners)}</span>}
          </li>
        ))}
      </ul>
    </>
  );
}
