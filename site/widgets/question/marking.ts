// Reading and marking an answer; a question fetches it when somebody begins to answer.
export { mark, readAnswer, scenarioToLink } from '#engine';
