export type WaitingProps = { readonly isOver: boolean };

/**
 * Stands where the season will be: the first reading is under way, or came to nothing (which is said elsewhere). The outline
 * appears only after a moment, so that a quick reading does not flicker.
 */
export const Waiting = ({ isOver }: WaitingProps) => (
  <div className="pn-waiting">
    <h1>Pennyacre</h1>
    {!isOver && (
      <div role="status">
        <span className="pn-unseen">Reading the workbook …</span>
        <div className="pn-skeleton" aria-hidden="true">
          <i />
          <i />
          <i />
          <i />
          <i />
        </div>
      </div>
    )}
  </div>
);
