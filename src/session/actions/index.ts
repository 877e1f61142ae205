export { type Action, pictureOf, type Whose } from './action';
export {
  setEyesAt,
  setFrameHeight,
  setFraming,
  setHold,
  setOrientation,
  usualFrameHeight,
} from './crop';
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
export {
  resetLight,
  resetToDemo,
  setCameraWall,
  setFormat,
  setKit,
  setLight,
  setNotes,
  setPlay,
  setPrintHeight,
  setRoom,
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
