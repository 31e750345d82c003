import { type ReactNode, useEffect } from "react";
import { useAnswer } from "../../engine/useAnswer.ts";
import { moneyText } from "../../frame/moneyText.ts";
import { noteStep, useBench } from "../../store/benchStore.ts";
import { CutList } from "./CutList.tsx";
import "./parts.css";
import { Shopping } from "./Shopping.tsx";
import { StockFile } from "./StockFile.tsx";
import { useStock } from "./useStock.ts";

/** What to buy and what to cut, priced by the shop's own list. */
export default function PartsStep(): ReactNode {
  const prices = useStock();
  const isLooker = useBench((bench) => bench.visitor?.role === "view");
  const stockText = prices.list?.text ?? null;
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
        {isLooker ? (
          <p className="note">What the shop pays is shown to those who may edit.</p>
        ) : (
          <StockFile prices={prices} />
        )}
      </header>
      {fault !== null && <p role="alert">The list could not be made: {fault}</p>}
      {answer?.ok === false && (
        <p role="alert">
          The price list in use cannot be read by this version of the app.{" "}
          {answer.refusals[0]?.message}
        </p>
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
