/** The actions of the handout and the talk, fetched with them. */

export {
  hangComparison,
  keepComparison,
  moveComparison,
  removeComparison,
  replaceComparison,
  setComparison,
  setSeries,
  setTabled,
} from './comparisons';
export {
  addPage,
  movePage,
  removePage,
  setAuthor,
  setPageComparison,
  setPagePart,
  setPageWords,
  setSheet,
  setTemplate,
} from './handout';
export * from './index';
