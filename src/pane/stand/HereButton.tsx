import { useState } from "react";
import { Button } from "../parts/Button";

/** Five decimals of a degree are about a metre. */
const decimals = 5;
const patience = 20_000;

/** Takes the place where this device is, once it is asked and the browser was allowed to; nothing where the browser knows none. */
export function HereButton({ take }: { readonly take: (latitude: string, longitude: string) => void }) {
  const [says, setSays] = useState("");
  if (!("geolocation" in navigator)) return null;
  const ask = () => {
    setSays("Asking this device …");
    navigator.geolocation.getCurrentPosition(
      ({ coords: { latitude, longitude, accuracy } }) => {
        take(latitude.toFixed(decimals), longitude.toFixed(decimals));
        setSays(`Taken, within about ${Math.ceil(accuracy)} m.`);
      },
      ({ message }) => setSays(`This device does not say where it is${message === "" ? "" : `: ${message}`}.`),
      { enableHighAccuracy: true, timeout: patience },
    );
  };
  return (
    <>
      <p className="pn-buttons">
        <Button onClick={ask}>Take this device’s place</Button>
      </p>
      <output className="pn-says">{says}</output>
    </>
  );
}
