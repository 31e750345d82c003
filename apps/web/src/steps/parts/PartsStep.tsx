import { type ReactNode, useEffect } from "react";
import { useAnswer } from "../../engine/useAnswer.ts";
import { noteStep } from "../../store/benchStore.ts";
import { CutList } from "./CutList.tsx";
import { moneyText } from "./moneyText.ts";
import "./parts.css";
import { Shopping } from "./Shopping.tsx";
import { StockFile } from "./StockFile.tsx";
import { useStockText } from "./useStockText.ts";

/** What to buy and what to cut, priced by the shop's own list. */
export default function PartsStep(): ReactNode {
  const [stockText, setStockText] = useStockText();
  const { answer, fault } = useAnswer("partsShopping", { stockText });
  const priced = answer?.ok === true ? answer.priced : null;
  const hasList = answer?.ok === true && answer.hasList;
  useEffect(() => {
    if (priced === null) return;
    const text = hasList
      ? moneyText(priced.totalPrice, priced.currency)
      : `${priced.rows.length} lines`;
    noteStep("parts", { text, box: hasList && priced.isComplete ? "ticked" : "half" });
  }, [priced, hasList]);
  return (
    <div className="parts">
      <header className="parts-head">
        <h1>Parts</h1>
        {priced !== null && hasList && (
          <p className="parts-total">
            {moneyText(priced.totalPrice, priced.currency)}
            {!priced.isComplete && (
              <span className="note"> without {priced.missingCount} lines that have no price</span>
            )}
          </p>
        )}
        <StockFile hasList={stockText !== null} onText={setStockText} />
      </header>
      {fault !== null && <p role="alert">The list could not be made: {fault}</p>}
      {answer?.ok === false && (
        <div role="alert" className="caution">
          <b>The price list was not taken.</b>
          <ul>
            {answer.refusals.map((refusal) => (
              <li key={`${refusal.line} ${refusal.code}`}>
                {refusal.line === null ? "" : `Line ${refusal.line}: `}
                {refusal.message} {refusal.remedy}
              </li>
            ))}
          </ul>
        </div>
      )}
      {answer?.ok === true && answer.passedOver > 0 && (
        <p className="note">
          {answer.passedOver} rows of the list are of no use to a loom and were passed over.
        </p>
      )}
      {priced !== null && <Shopping priced={priced} hasList={hasList} />}
      <CutList />
    </div>
  );
}
