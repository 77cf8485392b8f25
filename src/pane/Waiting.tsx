/** The first reading is under way. The outline appears only after a moment, so that a quick reading does not flicker. */
export const Waiting = () => (
  <div className="pn-waiting" role="status">
    <span className="pn-unseen">Reading the workbook …</span>
    <div className="pn-skeleton" aria-hidden="true"><i /><i /><i /><i /><i /></div>
  </div>
);
