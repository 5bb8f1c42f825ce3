import { render } from "preact";
import "./styles/tokens.css";
import "./styles/base.css";
import { openPhone } from "./offline/phone";
import { App } from "./shell/app";
import { startWorker } from "./shell/worker";

async function start(): Promise<void> {
  const root = document.getElementById("app");
  if (!root) throw new Error("index.html has no #app.");
  startWorker();
  render(<App phone={await openPhone()} />, root);
}

void start();
