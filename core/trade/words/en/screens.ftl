# screens
