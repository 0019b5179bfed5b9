### Where water that is seen inside comes in: suspects and reasons.
