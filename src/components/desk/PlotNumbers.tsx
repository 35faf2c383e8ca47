interface Props {
  /** What they are the numbers of, for who does not see the plot: `The response`. */
  of: string;
  head: readonly string[];
  /** The first cell names its row. */
  rows: readonly (readonly string[])[];
}

/** The numbers of a plot as a table, folded under it. */
export function PlotNumbers({ of, head, rows }: Props) {
  return (
    <details class="plot-numbers">
      <summary>The numbers</summary>
      <section class="plot-numbers-scroll" tabIndex={0} aria-label={`${of} in numbers`}>
        <table>
          <thead>
            <tr>
              {head.map((title) => (
                <th key={title} scope="col">
                  {title}
                </th>
              ))}
            </tr>
          </thead>
          <tbody>
            {rows.map(([name, ...cells], index) => (
              <tr key={`${index} ${name}`}>
                <th scope="row">{name}</th>
                {cells.map((cell, column) => (
                  <td key={head[column + 1]}>{cell}</td>
                ))}
              </tr>
            ))}
          </tbody>
        </table>
      </section>
    </details>
  );
}
