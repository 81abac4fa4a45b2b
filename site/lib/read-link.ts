// Reading a link needs the whole schema of a scenario; figures fetch it only when a link is there to be read.
export { scenarioFromLink } from '#engine';
