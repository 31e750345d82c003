import type { ReactNode } from "react";
import { WireSwatch } from "../frame/WireSwatch.tsx";
import { SelectField } from "./SelectField.tsx";

/** Words of the colours wire is sold in, as the document writes them. */
const COLOURS = [
  "black",
  "white",
  "red",
  "yellow",
  "green",
  "light green",
  "dark green",
  "blue",
  "light blue",
  "purple",
  "grey",
  "pink",
  "orange",
  "brown",
  "dark brown",
] as const;

const CHOICES = COLOURS.map((word) => ({ value: word, word }));

type Colour = { readonly main: string; readonly tracer?: string | undefined };

/** Colour of a wire: the main one, and a tracer where it has one. */
export function ColourField({
  value,
  onColour,
}: {
  value: Colour | null;
  onColour: (colour: Colour | null) => void;
}): ReactNode {
  const tracer = value?.tracer ?? "";
  return (
    <div className="colour-field">
      <WireSwatch colour={value} widthPx={96} />
      <SelectField
        label="colour"
        value={value?.main ?? ""}
        none="not known"
        choices={CHOICES}
        onChoice={(main) =>
          onColour(main === "" ? null : { main, ...(tracer === "" ? {} : { tracer }) })
        }
      />
      <SelectField
        label="tracer"
        value={tracer}
        none="none"
        choices={CHOICES.filter(({ value: word }) => word !== value?.main)}
        onChoice={(next) => {
          if (value === null) return;
          onColour(next === "" ? { main: value.main } : { main: value.main, tracer: next });
        }}
      />
    </div>
  );
}
