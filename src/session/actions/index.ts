// What the plan alone does stands in ./plan-page: the first pictures do not wait for it.
export { type Action, pictureOf, type Whose } from './action';
export {
  setEyesAt,
  setFrameHeight,
  setFraming,
  setHold,
  setOrientation,
} from './crop';
export { setFormat, setKit } from './kit';
export { cutFromLens, endCut, setFocal, setKept, setLens } from './lens';
export {
  addPicture,
  matchLook,
  moveStandpoint,
  removePicture,
  setCameraHeight,
  setFNumber,
  setTilt,
} from './pictures';
export { setCameraWall, setRoom } from './room';
export {
  moveLamp,
  resetLight,
  resetToDemo,
  setLight,
  setNotes,
  setPlay,
  setPrintHeight,
  setTitle,
  setUnits,
} from './scene';
export {
  addPerson,
  removePerson,
  resetDimensions,
  resetLooks,
  setBeside,
  setCompany,
  setDimension,
  setGaze,
  setLooks,
  setPose,
  setSitter,
  type Whom,
  withDimension,
} from './sitter';
